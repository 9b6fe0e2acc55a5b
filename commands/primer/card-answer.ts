import type { Primer } from '../../core/care/primers/primer.ts';
import { primerPicture } from '../../core/picture/primer.ts';
import { say } from '../../core/wording/say.ts';
import type { Answer, NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { ofParts } from './of-parts.ts';
import { toolsOf } from './tools.ts';

/** A button that opens a card. */
export function openCard(card: string): NextAction {
  return action(say('primer.card', { card }), 'primer', { card });
}

/** One card as an answer, with its picture, the sums it leads to, and the cards to read next. */
export function cardAnswer(card: Primer): Answer {
  const { id, see } = card;
  const picture = primerPicture(id);
  const given = { ...ofParts(card, [...toolsOf(id), ...see.map(openCard)]), isList: true };
  return picture === undefined
    ? given
    : { ...given, pictures: [{ name: `${id.replace(/\W+/g, '-').toLowerCase()}.png`, ...picture }] };
}
