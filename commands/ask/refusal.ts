import { symptomCard, type SymptomId } from '../../core/care/symptoms/cards.ts';
import { symptomsIn } from '../../core/care/symptoms/find.ts';
import { urgentIn } from '../../core/care/urgent/find.ts';
import { CURE, MEDICINES } from '../../core/care/urgent/ways/subjects.ts';
import { BLEACH_GAS } from '../../core/care/hazards.ts';
import { NO_MEDICINE } from '../../core/care/urgent/people.ts';
import { saidIn } from '../../core/care/said.ts';
import { cleanerPairs } from '../../core/care/hurt/families.ts';
import type { Heard } from '../../core/words/hear.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { answer, type Answer } from '../answer.ts';
import { symptomAction } from '../triage/menu.ts';
import { urgentAction } from '../urgent/action.ts';
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
  return answer({
    headline: isGas
      ? `No. ${BLEACH_GAS}`
      : 'Not into a tank: I work out no amounts of bleach, lye, acids or disinfectants.',
    steps: ['To clean equipment follow the label, rinse well, and let it dry before it goes back.'],
    cautions: [
      `${BLEACH_GAS} Never in a tank, and never on living coral or live rock.`,
      'Gloves, eye protection, fresh air.',
    ],
    sources: ['ghs', 'practice'],
  });
};

/** A medicine by its name, whatever is asked or said of it. */
export function namesMedicine(heard: Heard): boolean {
  return says(heard, ...MEDICINES);
}

/** What to do instead of a medicine, with the first step for what was seen. */
function noMedicine(seen: readonly SymptomId[]): Answer {
  return answer({
    headline: NO_MEDICINE,
    steps: [
      ...seen.slice(0, 1).map((id) => symptomCard(id).first),
      'Test salinity, temperature, ammonia and pH first, and say here what they read: bad water looks like illness.',
      'Move a sick fish to a tank of its own for treatment: many medicines kill corals, shrimps and the filter.',
      'Post a clear photo and what changed lately, so that keepers can help you tell what it is.',
    ],
    cautions: [
      'Never into the display. Copper and many other treatments kill invertebrates and stay in rock and sand.',
    ],
    sources: ['practice'],
    next: [...seen.slice(0, 3).map((id) => symptomAction(id, {})), urgentAction('copper or medicine')],
  });
}

/** Words of a question that is hardly more than two names. */
const MOST_TERSE = 8;

/** "fenbendazole for hydroids 40g": an amount is asked without the word. */
function isTerse(heard: Heard): boolean {
  return tankVolume(heard) !== undefined && heard.text.split(' ').length <= MOST_TERSE;
}
