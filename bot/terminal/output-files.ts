import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Answer } from '../../commands/answer.ts';
import { extensionOf, safeName } from '../files.ts';
import { say } from '../../core/wording/say.ts';

/** Where the pictures and files of answers go, and what that takes. */
export interface Outbox {
  readonly dataDir: string;
  /** Draws SVG as PNG. */
  readonly toPng: (svg: string) => Promise<Uint8Array>;
  /** Logs an unknown error and returns its short id. */
  readonly reportFailure: (error: unknown) => string;
}

const mostOfAName = 10_000;

/** Writes what an answer holds beside text; the lines that tell of it. A failure costs the file, not the answer. */
export async function writeFiles(
  { pictures: drawings = [], file }: Answer,
  outbox: Outbox,
): Promise<readonly string[]> {
  const told = async (what: 'picture' | 'file', writing: () => Promise<string>): Promise<string> => {
    try {
      return say(`terminal.${what}At`, { path: await writing() });
    } catch (error) {
      return say(`terminal.${what}Lost`, { errorId: outbox.reportFailure(error) });
    }
  };
  const pictures = join(outbox.dataDir, 'pictures');
  const files = join(outbox.dataDir, 'files');
  const lines: string[] = [];
  for (const picture of drawings) {
    const draw = async (): Promise<string> =>
      write(pictures, safeName(picture.name, 'png'), await outbox.toPng(picture.svg));
    lines.push(await told('picture', draw), picture.alt);
  }
  if (file !== undefined) {
    const name = safeName(file.name, extensionOf(file.name));
    lines.push(await told('file', () => write(files, name, file.text)));
  }
  return lines;
}

/** Writes a new file of this name, or of this name with a number; a file that exists is left alone. */
async function write(folder: string, name: string, content: Uint8Array | string): Promise<string> {
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const dot = name.lastIndexOf('.');
  for (let count = 1; count < mostOfAName; count += 1) {
    const numbered = count === 1 ? name : `${name.slice(0, dot)}-${count}${name.slice(dot)}`;
    const path = join(folder, numbered);
    if (await written(path, content)) return path;
  }
  throw new Error(`no free name is left for ${name}`);
}

async function written(path: string, content: Uint8Array | string): Promise<boolean> {
  try {
    await writeFile(path, content, { flag: 'wx', mode: 0o600 });
    return true;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') return false;
    throw error;
  }
}
