import type { Attachment } from 'discord.js';
import { Problem } from '../../../core/problem.ts';
import type { Option } from '../../../commands/options.ts';
import { checkFileSize, checkFileType, readText, type GivenFile } from '../../files.ts';
import { say } from '../../../core/wording/say.ts';

const longestMs = 2000;

/**
 * The text of a file a member attached, from the address Discord gave.
 *
 * @throws Problem when its name has another ending than the option takes, it is too large, no text, or does not arrive within `mostMs`.
 */
export async function download(
  { name: field, fileTypes = [] }: Pick<Option, 'name' | 'fileTypes'>,
  { name, size, url }: Pick<Attachment, 'name' | 'size' | 'url'>,
  mostMs = longestMs,
): Promise<GivenFile> {
  checkFileType(field, name, fileTypes);
  checkFileSize(field, name, size);
  return readText(field, name, await fetched(field, name, url, AbortSignal.timeout(mostMs)));
}

async function fetched(field: string, name: string, url: string, signal: AbortSignal): Promise<Uint8Array> {
  try {
    const { ok, status, body } = await fetch(url, { redirect: 'error', signal });
    if (!ok || body === null) throw new Error(`the address of an attachment answers ${status}`);
    const chunks: Uint8Array[] = [];
    let bytes = 0;
    for await (const chunk of body) {
      bytes += chunk.byteLength;
      checkFileSize(field, name, bytes);
      chunks.push(chunk);
    }
    return Buffer.concat(chunks);
  } catch (error) {
    if (error instanceof Problem) throw error;
    const sentence = signal.aborted ? say('discord.fileTooSlow') : say('discord.fileNotFetched');
    throw new Problem(sentence, { field, given: name, hint: say('discord.hintNothingChanged') });
  }
}
