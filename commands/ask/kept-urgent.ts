import type { Slots } from '../../core/language/slots.ts';
import { urgentSide } from '../../core/water/limits.ts';
import { parameter } from '../../core/water/parameter.ts';
import { say } from '../../core/wording/say.ts';
import type { Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { loggedWords } from '../fill.ts';
import { freshReadings, isOfTank, type Kept } from './kept-slots.ts';

/** An answer about a tank with one line on what its log holds that cannot wait and that the message is not about. */
export function withUrgent(given: Answer, slots: Slots, kept: Kept): Answer {
  const { tank } = kept;
  if (!isOfTank(slots, tank)) return given;
  const said = new Set((slots.levels ?? []).map(({ of }) => of));
  const urgent = freshReadings(kept).filter(
    ({ parameter: id, value }) => !said.has(id) && urgentSide(id, value) !== undefined,
  );
  if (urgent.length === 0) return given;
  const words = urgent.map((one) => `${parameter(one.parameter).label} ${loggedWords(one, tank)}`);
  return {
    ...given,
    dangers: [...given.dangers, `Urgent in the log of ${tank.name}: ${words.join(', ')}.`],
    next: [...given.next, action(say('ask.whatToDoAboutIt'), 'checkup', { tank: tank.name })],
  };
}
