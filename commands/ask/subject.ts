import { primer } from '../../core/care/primers/cards.ts';
import { asksOfMains, subjectIn } from '../../core/care/urgent/ways/subjects.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { cardAnswer as primerAnswer } from '../primer/card-answer.ts';
import { answerOf } from '../defaults.ts';
import { urgentCommand } from '../urgent.ts';
import { typed } from './call.ts';
import type { Intent } from './intent.ts';

/** Something with a caution of its own, planned or done: heated rock, copper, tap water, mains, the end of an animal. */
export const subjectIntent: Intent = (heard, context) => {
  const what = subjectIn(heard.text);
  if (what === undefined) return undefined;
  const input = { what, volume: tankVolume(heard)?.text };
  const given = answerOf(urgentCommand, input, context);
  return { ...given, read: [`your question as ${typed(urgentCommand, input)}`, ...given.read] };
};

/** A question about mains while nothing is wrong: the card to read. */
export const mainsIntent: Intent = ({ text }) =>
  asksOfMains(text) ? primerAnswer(primer('water and mains')) : undefined;
