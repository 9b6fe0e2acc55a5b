import { urgentIn } from '../../core/care/urgent/find.ts';
import { BLEACH_GAS, NO_MEDICINE } from '../../core/care/urgent/person.ts';
import type { Heard } from '../../core/words/hear.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { answer } from '../answer.ts';
import { says, type Intent } from './intent.ts';

const MEDICINES = [
  'medicine', 'medication', 'medicate', 'meds?', 'antibiotics?', 'dewormer', String.raw`\w+(?:mycin|cycline|cillin|floxacin|dazole|quantel|mectin)`,
  'copper', 'formalin', 'malachite', 'methylene blue', 'chloroquine', 'iodine dip', 'potassium permanganate',
]; // prettier-ignore
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

/** Medicine doses and disinfectants in a tank: no number, and who to ask instead. */
export const refusalIntent: Intent = (heard) => {
  const asksAmount = says(heard, ...AMOUNT_WORDS);
  if (says(heard, ...MEDICINES) && (asksAmount || isTerse(heard))) {
    return answer({
      headline: NO_MEDICINE,
      steps: [
        'Test salinity, temperature, ammonia and pH first, and say here what they read: bad water looks like illness.',
        'Move a sick fish to a tank of its own for treatment: many medicines kill corals, shrimps and the filter.',
        'Post a clear photo and what changed lately, so that keepers can help you tell what it is.',
      ],
      cautions: ['Copper and many other treatments kill invertebrates and stay in rock and sand.'],
      sources: ['practice'],
    });
  }
  const isGas =
    says(heard, 'bleach', 'chlorine') &&
    says(heard, 'vinegar', 'acid', 'ammonia') &&
    says(heard, 'mix(?:ed|ing)?');
  if ((!asksAmount && !isGas && !isTerse(heard)) || urgentIn(heard.text) === 'bleach or spray')
    return undefined;
  if (!says(heard, ...DISINFECTANTS)) return undefined;
  return answer({
    headline: isGas
      ? `No. ${BLEACH_GAS}`
      : 'Not into a tank: I work out no amounts of bleach, lye, acids or disinfectants.',
    steps: ['To clean equipment follow the label, rinse well, and let it dry before it goes back.'],
    cautions: [`${BLEACH_GAS} Never use it on zoanthids or live rock.`, 'Gloves, eye protection, fresh air.'],
    sources: ['ghs', 'practice'],
  });
};

/** Words of a question that is hardly more than two names. */
const MOST_TERSE = 8;

/** "fenbendazole for hydroids 40g": an amount is asked without the word. */
function isTerse(heard: Heard): boolean {
  return tankVolume(heard) !== undefined && heard.text.split(' ').length <= MOST_TERSE;
}
