import { primer } from '../../core/care/primers/cards.ts';
import { met, type Met } from '../../core/language/met.ts';
import type { Reading } from '../../core/language/reading.ts';
import type { Slots } from '../../core/language/slots.ts';
import type { Scanned } from '../../core/language/tokens.ts';
import { raisedBy } from '../../core/dosing/raised-by.ts';
import type { Answer } from '../answer.ts';
import { call } from '../called.ts';
import type { OwnContext } from '../command.ts';
import { cardAnswer } from '../primer/card-answer.ts';
import { urgentCommand } from '../urgent.ts';
import { noCleaner, noMedicine, noPeroxide } from './no-amount.ts';
import { symptomKinds, symptomOf } from './of-reading.ts';

const MEDICINES: readonly Met[] = [
  'poisons.copper',
  'poisons.copperTreatment',
  'poisons.antibiotic',
  'poisons.antiprotozoal',
  'poisons.dewormer',
  'poisons.formalin',
  'poisons.painkiller',
  'poisons.algaecide',
];
/** Oxidisers of cleaning; the two of the second list give off poison with each other, too. */
const BLEACH: readonly Met[] = ['poisons.bleach', 'poisons.chlorine'];
/** What bleach must not meet. */
const SOUR: readonly Met[] = [
  'poisons.acid',
  'poisons.ammoniaCleaner',
  'poisons.glassCleaner',
  'poisons.solvent',
  'poisons.alcohol',
  'substances.lye',
  'substances.carbonSource',
  'substances.ammoniaSource',
];

/** Where a medicine does not belong, and where it does or an amount is asked. */
const REEF: readonly Met[] = [
  'places.tank',
  'places.rock',
  'corals.anyCoral',
  '#coral',
  'animals.anemone',
  'animals.shrimp',
  'animals.snail',
];
const AMOUNT: readonly Met[] = [
  'manner.askMuch',
  'deeds.doses',
  'deeds.quarantines',
  'hardware.hospitalTank',
];

/** Whether a medicine, or what kills in a reef, is named. */
export function namesMedicine(scanned: Scanned): boolean {
  return met(scanned, ...MEDICINES);
}

/** Whether bleach is named, which no rule makes fit for a tank. */
export function namesBleach(scanned: Scanned): boolean {
  return met(scanned, 'poisons.bleach');
}

/** A treatment that is asked for: never an amount; what to do instead, or why not in the reef. */
export function medicineAnswer(reading: Reading, context: OwnContext): Answer {
  const { scanned } = reading;
  const isMedicine = namesMedicine(scanned);
  if (isMedicine && met(scanned, ...REEF) && !met(scanned, ...AMOUNT))
    return call(urgentCommand, { what: 'copper or medicine' }, context);
  if (isGas(scanned)) return noCleaner(true);
  if (!isMedicine && met(scanned, 'poisons.peroxide')) return noPeroxide;
  if (!isMedicine && met(scanned, ...BLEACH, 'poisons.acid', 'substances.lye')) return noCleaner(false);
  return noMedicine(seenIn(reading));
}

/** From this share of all kinds a sign counts as seen, beside the treatment that is asked for; own choice. */
const SEEN = 0.05;

function seenIn(reading: Reading): ReturnType<typeof symptomOf>['others'] {
  const kind = symptomKinds.find((each) =>
    reading.kinds.some(({ name, probability }) => name === each && probability >= SEEN),
  );
  const { first, others } = kind === undefined ? { first: undefined, others: [] } : symptomOf(reading, kind);
  return first === undefined ? others : [first, ...others];
}

/** Two that make a poisonous gas: bleach with what is sour, with ammonia or with peroxide; peroxide with what is sour. */
export function isGas(scanned: Scanned): boolean {
  const hasBleach = met(scanned, ...BLEACH);
  const hasPeroxide = met(scanned, 'poisons.peroxide');
  const isSour = met(scanned, ...SOUR) || scanned.names.some(({ id }) => id === 'ammonia');
  return (hasBleach && hasPeroxide) || ((hasBleach || hasPeroxide) && isSour);
}

/** Whether two may be put together; undefined for a pair nothing is known of here. */
export function mixingAnswer(scanned: Scanned, slots: Slots): Answer | undefined {
  if (isGas(scanned) || met(scanned, ...BLEACH)) return noCleaner(isGas(scanned));
  if (met(scanned, ...MEDICINES)) return noMedicine([]);
  if (!isTwoPart(scanned, slots)) return undefined;
  const card = primer('alkalinity and calcium');
  const apart = card.steps?.at(-1);
  const given = cardAnswer(card);
  return apart === undefined ? given : { ...given, headline: apart };
}

/** Something for alkalinity beside something for calcium. */
function isTwoPart(scanned: Scanned, { salts = [] }: Slots): boolean {
  const raised = salts.flatMap((salt) => raisedBy(salt));
  const has = (id: string, ...classes: readonly Met[]): boolean =>
    raised.some((each) => each === id) ||
    met(scanned, ...classes) ||
    scanned.names.some((name) => name.class === 'parameter' && name.id === id);
  return (
    met(scanned, 'substances.twoPart') ||
    (has('alkalinity', 'substances.alkPowder', 'sums.alkalinity') &&
      has('calcium', 'substances.calciumSalt', 'substances.lime', 'sums.calcium'))
  );
}
