import { dirname } from 'node:path';
import { Problem } from '../../core/problem.ts';

/** Runs `work` on `file`; an error that the person who runs the bot can put right becomes a Problem. */
export function explained<T>(file: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw explain(file, error) ?? error;
  }
}

/** Whether SQLite says that the file is damaged or no database. */
export function isUnreadable(error: unknown): boolean {
  return /^SQLITE_(NOTADB|CORRUPT)/.test(codeOf(error));
}

export function notOurs(file: string): Problem {
  return problem('The data file is damaged or was not made by this bot.', {
    given: file,
    hint: 'Move it away, or put a backup in its place: node dist/bot/store/restore-cli.js BACKUP_FILE.',
  });
}

export function tooNew(file: string, version: number, ours: number): Problem {
  return problem(`The data file has version ${version}; this bot knows versions up to ${ours}.`, {
    given: file,
    hint: 'Run the newer bot that wrote it, or restore a backup made before that.',
  });
}

function explain(file: string, error: unknown): Problem | undefined {
  const code = codeOf(error);
  if (isUnreadable(error)) return notOurs(file);
  if (code.startsWith('SQLITE_BUSY')) {
    return problem('Another bot is already running on this DATA_DIR.', {
      hint: 'Stop it first, or give this one a folder of its own.',
    });
  }
  if (/^SQLITE_FULL|^ENOSPC/.test(code)) return problem('The disk that holds DATA_DIR is full.', {});
  if (/^SQLITE_(CANTOPEN|READONLY|PERM)|^(EACCES|EPERM|EROFS|ENOTDIR|EEXIST|EISDIR)$/.test(code)) {
    return problem('The bot cannot write its data file in DATA_DIR.', {
      given: file,
      hint: `Check that ${dirname(file)} is a folder that the bot's user may write.`,
    });
  }
  return undefined;
}

function problem(message: string, details: { given?: string; hint?: string }): Problem {
  return new Problem(message, { field: 'DATA_DIR', ...details });
}

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : '';
}
