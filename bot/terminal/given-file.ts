import { readFileSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import type { Command } from '../../commands/command.ts';
import { optionsOf } from '../../commands/options.ts';
import { Problem } from '../../core/problem.ts';
import { checkFileSize, readText, type GivenFile } from '../files.ts';
import { say } from '../../core/wording/say.ts';

type Input = Readonly<Record<string, unknown>>;

/**
 * The input of a command with its files read: a path, from the working directory, becomes name and text.
 *
 * @throws Problem for a path that leads to no file of text, or to one too large.
 */
export function withFiles(command: Command, input: Input): Input {
  const read = optionsOf(command.options)
    .filter(({ kind }) => kind === 'file')
    .flatMap(({ name }) => (typeof input[name] === 'string' ? [[name, readGiven(name, input[name])]] : []));
  return read.length === 0 ? input : { ...input, ...Object.fromEntries(read) };
}

function readGiven(field: string, path: string): GivenFile {
  const name = basename(path);
  try {
    const found = statSync(path);
    if (!found.isFile()) throw new Problem(say('terminal.noFile'), { field, given: path });
    checkFileSize(field, name, found.size);
    return readText(field, name, readFileSync(path));
  } catch (error) {
    if (error instanceof Problem) throw error;
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    const missing = ['ENOENT', 'ENOTDIR'].includes(code);
    throw new Problem(missing ? say('terminal.noSuchFile') : say('terminal.fileUnread', { code }), {
      field,
      given: path,
      hint: say('terminal.hintPath'),
    });
  }
}
