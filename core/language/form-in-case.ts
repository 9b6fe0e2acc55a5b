import { known, type Case } from './case.ts';
import type { Reading } from './reading.ts';
import { formOf } from './salt-said.ts';

/** "Tub says dihydrate" after "calcium chloride": the salt told before in that form, as if its whole name stood there. */
export function withForm(reading: Reading, before: Case): Reading {
  const { salt } = known(before);
  const { scanned } = reading;
  const id = salt === undefined ? undefined : formOf(salt, scanned);
  const at = scanned.tokens.find(({ word }) => id?.endsWith(word) === true);
  if (id === undefined || at === undefined) return reading;
  const name = { class: 'salt', id, start: at.start, end: at.end } as const;
  return { ...reading, scanned: { ...scanned, names: [...scanned.names, name] } };
}
