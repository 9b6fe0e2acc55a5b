import { met } from '../../../core/language/met.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { powderInWater } from '../../../core/language/powder-in-water.ts';
import { primer } from '../../../core/care/primers/cards.ts';
import { Problem } from '../../../core/problem.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { significant } from '../../../core/quantity/format.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { limewaterCommand } from '../../dose/limewater.ts';
import { withUnit } from '../../../core/language/system-volume.ts';
import { solutionCommand } from '../../dose/solution.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { withRemarks } from './said-remarks.ts';
import { attempt } from './attempt.ts';
import { eachPowder, ofBottle } from './bottle-dose.ts';
import { gramsPerLitre, isMass, stockSaid, type StockSaid } from './stock-said.ts';
import { isSwap, swapped } from './swap.ts';

export const solutionRows: readonly Row[] = [
  {
    kind: 'solution',
    label: 'Strength of a solution',
    needs: [
      {
        oneOf: ['salt'],
        ask: 'Which powder is it, by its chemical name?',
        when: ({ slots }) => slots.bottle === undefined,
      },
      {
        oneOf: ['container', 'strength', 'bottle'],
        ask: 'In how much water, filled up?',
        when: (frame) => !isSwap(frame) && powderIn(frame) !== undefined && vesselIn(frame) === undefined,
      },
    ],
    uses: [
      'salt',
      'salts',
      'amount',
      'amounts',
      'strength',
      'bottle',
      'container',
      'change',
      'wanted',
      'now',
      'volume',
    ],
    answer: solutionOf,
  },
  {
    kind: 'limewater',
    label: 'Limewater in the top-off',
    uses: [
      'container',
      'waterRate',
      'waterRateDays',
      'amount',
      'amountDays',
      'rate',
      'rateDays',
      'change',
      'of',
      'volume',
      'salt',
      'temperature',
      'strength',
    ],
    answer: (frame, context) => {
      const given =
        strengthOf(frame, context) ??
        topOff(frame, context) ??
        batch(frame, context) ??
        cardAnswer(primer('limewater'));
      return withRemarks(frame, given);
    },
  },
];

/** How strong a solution is, what to weigh in for the vessel that was named, or its millilitres for a rise. */
export function solutionOf(frame: Frame, context: OwnContext): Answer | undefined {
  if (isSwap(frame)) return swapped(frame, context);
  const { change, wanted, now, volume } = frame.slots;
  const { salt } = frame.slots;
  const vessel = vesselIn(frame);
  const labelled =
    salt === undefined && vessel !== undefined && powderIn(frame) === undefined
      ? eachPowder(frame.slots, vessel, context)
      : ofBottle(frame.slots, { with: salt, bottle: vessel }, context);
  if (labelled !== undefined) return labelled;
  const stock = inVessel(stockSaid({ ...frame.slots, container: vessel }), vessel);
  if (stock === undefined)
    return salt === undefined
      ? undefined
      : call(solutionCommand, { with: salt, volume: vessel ?? '1 L' }, context);
  const goal = change === undefined ? wanted : `+${change}`;
  return call(
    solutionCommand,
    { ...stock, goal, now: goal === undefined ? undefined : now, tank: volume },
    context,
  );
}

/** The vessel a solution is made in: said as such, or a volume that nothing else explains ("a 4 litre jug"). */
function vesselIn({
  slots: { container, amounts = [] },
  reading: { scanned, said },
}: Frame): string | undefined {
  const poured = amounts.find((text) => !isMass(text) && isLitres(text));
  return container ?? poured ?? powderInWater(scanned, said)?.water;
}

/** As much of a stock as the vessel that was named holds: 80 g in a litre are 160 g in 2 L. */
function inVessel(stock: StockSaid | undefined, vessel: string | undefined): StockSaid | undefined {
  if (stock === undefined || vessel === undefined || stock.volume === vessel) return stock;
  const grams = attempt(
    () => gramsPerLitre(stock) * readQuantity('volume', vessel, { field: 'volume' }).value,
  );
  return grams === undefined ? stock : { ...stock, amount: `${significant(grams, 4)} g`, volume: vessel };
}

/** What was weighed in, or how strong it is: without either the question is what dissolves. */
function powderIn({ slots: { amounts = [], strength } }: Frame): string | undefined {
  return strength ?? amounts.find(isMass);
}

function isLitres(text: string): boolean {
  return attempt(() => readQuantity('volume', text, { field: 'volume' }).value >= 0.1) === true;
}

/** What was put in against what dissolves, where no use shall be covered. */
function strengthOf(frame: Frame, context: OwnContext): Answer | undefined {
  const {
    slots,
    reading: { scanned, said },
  } = frame;
  const mix = slots.levels === undefined ? powderInWater(scanned, said) : undefined;
  if (mix === undefined) return undefined;
  const daily = evaporated(frame);
  const { volume } = slots;
  const input = { amount: mix.water, powder: mix.powder, per: mix.water };
  return (
    attempt(() => call(limewaterCommand, { ...input, daily, volume }, context)) ??
    call(limewaterCommand, input, context)
  );
}

/** Limewater in what evaporates each day, against a use where one was said. */
function topOff(frame: Frame, context: OwnContext): Answer | undefined {
  const { slots } = frame;
  const { rate, rateDays = 1, change, of, volume } = slots;
  const topOffADay = evaporated(frame);
  if (topOffADay === undefined) return undefined;
  const isNoTank = volume === undefined && context.keep?.tankInUse() === undefined;
  // "3 g per litre, or is 2 g all that dissolves": that needs no tank.
  if (isNoTank && slots.strength !== undefined && slots.levels === undefined)
    return call(limewaterCommand, { amount: topOffADay }, context);
  if (isNoTank) throw new Problem('How much water is in the system?', { field: 'volume' });
  const used = of === 'alkalinity' ? (rate ?? change) : undefined;
  const goal = used === undefined ? undefined : levelADay(used, rateDays);
  if (goal === undefined && volume === undefined) return undefined;
  return inVesselToo(frame, call(limewaterCommand, { amount: topOffADay, goal, volume }, context), context);
}

/** The top-off of a day: "3 L a day", also as a bare number in the unit of another volume. */
function evaporated({ slots, reading: { scanned, said } }: Frame): string | undefined {
  const { amount, amountDays, waterRate, waterRateDays } = slots;
  const bare = said.find(
    ({ part, of, number }) =>
      part === 'rate' && of === 'nothing' && number.kinds.length === 0 && number.everyDays !== undefined,
  );
  const isBare = waterRate === undefined && amountDays === undefined && bare !== undefined;
  const text = isBare
    ? withUnit(scanned, said, bare)
    : (waterRate ?? (amountDays === undefined ? undefined : amount));
  const days = isBare ? bare.number.everyDays : (waterRateDays ?? amountDays);
  return text === undefined ? undefined : eachDay(text, days ?? 1);
}

/** The spoons that the vessel named beside it can dissolve, where spoons are asked for. */
function inVesselToo(
  { slots: { container }, reading: { scanned } }: Frame,
  given: Answer,
  context: OwnContext,
): Answer {
  if (container === undefined || !met(scanned, 'manner.unitSpoon')) return given;
  const full = attempt(() => call(limewaterCommand, { amount: container }, context));
  return full === undefined ? given : { ...given, headline: `${full.headline} ${given.headline}` };
}

/** What a vessel of it can hold. */
function batch({ slots, reading: { scanned } }: Frame, context: OwnContext): Answer | undefined {
  const { container, volume } = slots;
  const vessel = container ?? (met(scanned, 'parts.vessel') ? volume : undefined);
  return vessel === undefined ? undefined : call(limewaterCommand, { amount: vessel }, context);
}

/** "5.6 dKH" a week as "0.8 dKH". */
function levelADay(level: string, days: number): string {
  if (days === 1) return level;
  const { written, unit } = readQuantity('alkalinity', level, { field: 'goal', fallback: 'dKH' });
  return `${significant(written / days, 4)} ${unit === '' ? 'dKH' : unit}`;
}

/** "14 L" a week as "2 L". */
function eachDay(amount: string, days: number): string {
  if (days === 1) return amount;
  const { value } = readQuantity('volume', amount, { field: 'amount' });
  return `${significant(value / days, 3)} L`;
}
