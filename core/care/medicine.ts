import { MEDICINES } from './urgent/ways/subjects.ts';

const NAMES = new RegExp(String.raw`(?<![a-z0-9])(?:${MEDICINES.join('|')}|copper)(?![a-z0-9])`, 'i');

/** Whether a text names a medicine for animals, copper among them: no amount of it is worked out anywhere. */
export function namesMedicine(text: string): boolean {
  return NAMES.test(text);
}
