import type { CoralEntry } from '../../../core/corals/entry.ts';
import { onlyEntry } from '../../../core/corals/named.ts';
import { flowWords } from '../../../core/corals/rules/flow.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { primer } from '../../../core/care/primers/cards.ts';
import type { Answer, Fact } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { flowLine, lightLine, roomLine, spotLine } from '../../coral/about-lines.ts';
import { based } from '../../coral/based.ts';
import { isLoose, looseAnswer } from '../../coral/loose-answer.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import type { Row } from '../row.ts';
import { coralsOf, linesFirst, noPageOf } from './coral-said.ts';

export const coralPlaceRows: readonly Row[] = [
  {
    kind: 'coral-place',
    label: 'ask.kindCoralPlace',
    needs: [{ oneOf: ['corals'], ask: 'coral.whichCoral' }],
    uses: ['corals'],
    answer: (frame, context) => looseOnRock(frame) ?? placeOf(frame, context) ?? noPageOf(frame),
  },
  {
    kind: 'flow',
    label: 'ask.kindFlow',
    uses: ['corals'],
    answer: (frame, context) => {
      const [one] = coralsOf(frame);
      if (one === undefined) return noPageOf(frame) ?? cardAnswer(primer('flow'));
      const isOne = onlyEntry(one) !== undefined;
      return linesFirst(one, (entry) => [isOne ? flowLine(entry) : flowBand(entry)], context);
    },
  },
];

/** Its band alone, which may be the same for all that a name can mean where the notes are not. */
function flowBand(entry: CoralEntry): Fact {
  return { label: 'flow', value: based(flowWords(entry), entry.flow.basis) };
}

/** A coral that lies free on sand, and rock or glue beside it in the message. */
export function looseOnRock(frame: Frame): Answer | undefined {
  const loose = coralsOf(frame).find(({ entries }) => isLoose(entries[0]));
  const isOnRock = met(frame.reading.scanned, 'places.rock', 'deeds.glues', 'poisons.superglue');
  return loose !== undefined && isOnRock ? looseAnswer(loose) : undefined;
}

function placeOf(frame: Frame, context: OwnContext): Answer | undefined {
  const [one] = coralsOf(frame);
  if (one === undefined) return undefined;
  return linesFirst(
    one,
    (entry) => [spotLine(entry), lightLine(entry), flowLine(entry), roomLine(entry)],
    context,
  );
}
