import type { Frame } from '../../../core/language/frame.ts';
import { powderInWater } from '../../../core/language/powder-in-water.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { significant } from '../../../core/quantity/format.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { solutionCommand } from '../../dose/solution.ts';
import { noCleaner } from '../../triage/no-amount.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { withRemarks } from './said-remarks.ts';
import { attempt } from './attempt.ts';
import { eachPowder, ofBottle } from './bottle-dose.ts';
import { isCaustic } from './caustic.ts';
import { gramsPerLitre, isMass, stockSaid, type StockSaid } from './stock-said.ts';
import { limewaterOf } from './limewater.ts';
import { readableAs } from './readable-as.ts';
import { isSwap, swapped } from './swap.ts';

export const solutionRows: readonly Row[] = [
  {
    kind: 'solution',
    label: 'ask.kindSolution',
    needs: [
      {
        oneOf: ['salt'],
        ask: 'ask.whichPowder',
        when: (frame) => frame.slots.bottle === undefined && !isCaustic(frame),
      },
      {
        oneOf: ['container', 'strength', 'bottle'],
        ask: 'ask.inHowMuchWater',
        when: (frame) =>
          !isSwap(frame) &&
          !isCaustic(frame) &&
          powderIn(frame) !== undefined &&
          vesselIn(frame) === undefined,
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
    answer: (frame, context) => (isCaustic(frame) ? noCleaner(false) : solutionOf(frame, context)),
  },
  {
    kind: 'limewater',
    label: 'ask.kindLimewater',
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
    answer: (frame, context) => withRemarks(frame, limewaterOf(frame, context)),
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
  return (readableAs('volume', text) ?? 0) >= 0.1;
}
