import { dirname, join, parse } from 'node:path';

/** Where the backups of a file lie and what they are called: "sumpside-2026-03-14.sqlite" in "backups" beside it. */
export interface BackupNames {
  readonly folder: string;
  /** The copy of that day (UTC). */
  readonly daily: (nowMs: number) => string;
  /** The copy made before a file of that version is changed. */
  readonly beforeLeaving: (version: number, nowMs: number) => string;
  /** A copy under way. */
  readonly part: string;
  /** What a file in the folder is; undefined for any that we did not name. */
  readonly read: (name: string) => { readonly day: string; readonly isDaily: boolean } | undefined;
}

const ending = /^-(\d{4}-\d\d-\d\d)(-from-version-\d+)?\.sqlite$/;

export function backupNames(file: string): BackupNames {
  const folder = join(dirname(file), 'backups');
  const { name: stem } = parse(file);
  return {
    folder,
    daily: (nowMs) => join(folder, `${stem}-${dayOf(nowMs)}.sqlite`),
    beforeLeaving: (version, nowMs) => join(folder, `${stem}-${dayOf(nowMs)}-from-version-${version}.sqlite`),
    part: join(folder, `${stem}.part`),
    read: (name) => {
      const match = name.startsWith(stem) ? ending.exec(name.slice(stem.length)) : null;
      return match === null ? undefined : { day: match[1] ?? '', isDaily: match[2] === undefined };
    },
  };
}

function dayOf(nowMs: number): string {
  return new Date(nowMs).toISOString().slice(0, 10);
}
