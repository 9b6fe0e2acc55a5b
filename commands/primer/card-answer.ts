import type { Primer } from '../../core/care/primers/primer.ts';
import { primerPicture } from '../../core/picture/primer.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { toolsOf } from './tools.ts';

/** A button that opens a card. */
export function openCard(card: string): NextAction {
  return action(`Card: ${card}`, 'primer', { card });
}

/** One card as an answer, with its picture, the sums it leads to, and the cards to read next. */
export function cardAnswer({
  id,
  headline,
  points,
  steps = [],
  cautions = [],
  see,
  sources,
}: Primer): Answer {
  const picture = primerPicture(id);
  return answer({
    headline,
    facts: points.map(([label, value]) => ({ label, value })),
    steps,
    cautions,
    sources,
    next: [...toolsOf(id), ...see.map(openCard)],
    ...(picture === undefined
      ? {}
      : { picture: { name: `${id.replace(/\W+/g, '-').toLowerCase()}.png`, ...picture } }),
  });
}
