import { symptomsIn } from '../../core/care/symptoms/find.ts';
import { urgentIn } from '../../core/care/urgent/find.ts';
import { CURE, MEDICINES } from '../../core/care/urgent/ways/subjects.ts';
import { saidIn } from '../../core/care/said.ts';
import { cleanerPairs } from '../../core/care/hurt/families.ts';
import type { Heard } from '../../core/words/hear.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { noCleaner, noMedicine } from '../triage/no-amount.ts';
import { says, type Intent } from './intent.ts';

/** Two that make a poisonous gas together. */
const namesTwoCleaners = saidIn(cleanerPairs.map((all) => ({ all })));

const DISINFECTANTS = [
  'bleach',
  'chlorine',
  'ammonia solution',
  'caustic soda',
  'lye',
  'sodium hydroxide',
  'acid',
  'muriatic',
  'ph (?:down|minus)',
];

/** Words that ask for an amount. */
export const AMOUNT_WORDS = [
  'how much',
  'how many',
  'dose',
  'dosing',
  'dosage',
  'add',
  'mg',
  'ml',
  'grams?',
  'drops?',
  'amount',
] as const;

/** A medicine by its name, or a disinfectant in a tank: no number, and who to ask instead. */
export const refusalIntent: Intent = (heard) => {
  const asksAmount = says(heard, ...AMOUNT_WORDS);
  const isCopper = says(heard, 'copper(?! ?band)') && (asksAmount || isTerse(heard) || says(heard, ...CURE));
  if (namesMedicine(heard) || isCopper) return noMedicine(symptomsIn(heard.text));
  const isGas =
    namesTwoCleaners(heard.text) && says(heard, 'mix\\w*', 'combin\\w*', 'with', 'and', 'plus', 'then');
  if ((!asksAmount && !isGas && !isTerse(heard)) || urgentIn(heard.text) === 'bleach or spray')
    return undefined;
  if (!isGas && !says(heard, ...DISINFECTANTS)) return undefined;
  return noCleaner(isGas);
};

/** A medicine by its name, whatever is asked or said of it. */
export function namesMedicine(heard: Heard): boolean {
  return says(heard, ...MEDICINES);
}

/** Words of a question that is hardly more than two names. */
const MOST_TERSE = 8;

/** "fenbendazole for hydroids 40g": an amount is asked without the word. */
function isTerse(heard: Heard): boolean {
  return tankVolume(heard) !== undefined && heard.text.split(' ').length <= MOST_TERSE;
}
