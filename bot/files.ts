import { MAX_FILE } from '../commands/options.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/wording/say.ts';

/** A file someone gave: the value of an option of kind `file`. */
export interface GivenFile {
  readonly name: string;
  readonly text: string;
}

const longestGivenName = 200;
const longestBase = 60;

/** @throws Problem when a file has none of these endings; any will do where there are none. */
export function checkFileType(field: string, name: string, endings: readonly string[]): void {
  if (endings.length === 0 || endings.some((ending) => name.toLowerCase().endsWith(ending))) return;
  throw new Problem(say('log.fileWrongType'), {
    field,
    given: name.slice(0, longestGivenName),
    limit: endings.join(', '),
    hint: say('log.hintSaveAsText'),
  });
}

/** @throws Problem when a file of so many bytes is more than is read. */
export function checkFileSize(field: string, name: string, bytes: number): void {
  if (bytes <= MAX_FILE) return;
  throw new Problem(say('log.fileTooLarge'), {
    field,
    given: `${name.slice(0, longestGivenName)}, ${(bytes / 1e6).toFixed(1)} MB`,
    limit: say('convert.atMost', { most: `${MAX_FILE / 1e6} MB` }),
    hint: say('log.hintSplit'),
  });
}

/**
 * The text of a file in UTF-8, with the byte order mark if there is one.
 *
 * @throws Problem for anything but text.
 */
export function readText(field: string, name: string, bytes: Uint8Array): GivenFile {
  checkFileSize(field, name, bytes.byteLength);
  const text = decoded(bytes);
  if (text === undefined || text.includes('\0')) {
    throw new Problem(say('log.fileNoText'), {
      field,
      given: name.slice(0, longestGivenName),
      limit: say('log.limitText'),
      hint: say('log.hintSaveAsText'),
    });
  }
  return { name: name.slice(-longestGivenName), text };
}

function decoded(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

/** A name for a file of ours that is safe in any folder and address: "Light log.PNG" -> "light-log.png". */
export function safeName(name: string, extension: string): string {
  const ending = `.${extension}`;
  const lower = name.toLowerCase();
  const base = lower.endsWith(ending) ? lower.slice(0, -ending.length) : lower;
  const plain = base.replaceAll(/[^a-z0-9]+/g, '-').replaceAll(/^-+|-+$/g, '');
  return `${plain.slice(0, longestBase) || 'sumpside'}${ending}`;
}

/** The extension of a file's name, "txt" where it has none. */
export function extensionOf(name: string): string {
  return /\.([a-z0-9]{1,8})$/i.exec(name)?.[1]?.toLowerCase() ?? 'txt';
}
