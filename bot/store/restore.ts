import {
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  renameSync,
  rmSync,
} from 'node:fs';
import { dirname, join, parse, resolve } from 'node:path';
import { openDatabase } from './database.ts';
import { Problem } from '../../core/problem.ts';
import { connect } from './connection.ts';
import { explained, isUnreadable } from './explain.ts';
import { migrations, versionOf } from './migrations.ts';

export interface RestoreOptions {
  readonly backup: string;
  /** The data file that it takes the place of. */
  readonly file: string;
  readonly nowMs: number;
}

/**
 * Puts a backup in the place of the data file while no bot runs. The backup is copied, and the copy checked (ours, not
 * too new, whole), before anything is touched. Resolves with the path the replaced file was moved to, if there was one.
 * Members who had their data erased since the backup was made are back: erase them again.
 *
 * @throws Problem about the backup or the data file; then nothing has changed.
 */
export function restore({ backup, file, nowMs }: RestoreOptions): string | undefined {
  if (!existsSync(backup)) throw wrong(backup, 'There is no such backup file.');
  if (resolve(backup) === resolve(file)) throw wrong(backup, 'That is the data file itself.');
  return explained(file, () => {
    mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
    const part = `${file}.part`;
    try {
      copyFileSync(backup, part);
      checkCopy(part, backup);
      const aside = moveAside(file, nowMs);
      renameSync(part, file);
      return aside;
    } finally {
      for (const path of [part, `${part}-wal`, `${part}-shm`]) rmSync(path, { force: true });
    }
  });
}

function checkCopy(part: string, backup: string): void {
  const handle = openSync(part, 'r+');
  fsyncSync(handle);
  closeSync(handle);
  const copy = openDatabase(part);
  try {
    const version = versionOf(copy);
    if (version === undefined) throw wrong(backup, 'The backup was not made by this bot.');
    if (version === 0) throw wrong(backup, 'The backup is empty.');
    if (version > migrations.length) throw wrong(backup, 'The backup was made by a newer bot.');
    const whole = copy.pragma('integrity_check', { simple: true }) === 'ok';
    const [broken] = copy.pragma('foreign_key_check') as unknown[];
    if (!whole || broken !== undefined) throw wrong(backup, 'The backup is damaged.');
  } catch (error) {
    throw isUnreadable(error) ? wrong(backup, 'The backup is damaged or was not made by this bot.') : error;
  } finally {
    copy.close();
  }
}

/** Opening takes the file for us alone, so it fails while a bot runs; closing folds the write-ahead log in. */
function moveAside(file: string, nowMs: number): string | undefined {
  if (!existsSync(file)) return undefined;
  try {
    connect(file).db.close();
  } catch (error) {
    const isReplaceable = isUnreadable(error) || error instanceof Problem;
    if (!isReplaceable) throw error;
  }
  const { dir, name, ext } = parse(file);
  const stamp = new Date(nowMs).toISOString().replaceAll(/[-:.]/g, '');
  const aside = join(dir, `${name}-replaced-${stamp}${ext}`);
  for (const end of ['', '-wal', '-shm', '-journal'])
    if (existsSync(file + end)) renameSync(file + end, aside + end);
  return aside;
}

function wrong(backup: string, message: string): Problem {
  return new Problem(message, { field: 'BACKUP_FILE', given: backup });
}
