import { findCompound } from './compound.ts';
import type { ParameterId } from '../water/parameter.ts';

/** What a compound of that name is dosed for, in any of its forms; nothing for a word that names none. */
export function raisedBy(word: string): readonly ParameterId[] {
  const found = findCompound(word);
  if (found === undefined) return [];
  return 'raises' in found ? found.raises : found.flatMap((form) => form.raises);
}
