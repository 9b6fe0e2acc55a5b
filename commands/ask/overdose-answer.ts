import type { Frame } from '../../core/language/frame.ts';
import { raisedBy } from '../../core/dosing/raised-by.ts';
import { Problem } from '../../core/problem.ts';
import { call } from '../called.ts';
import type { Answer } from '../answer.ts';
import type { OwnContext } from '../command.ts';
import { effectCommand } from '../dose/effect.ts';
import { urgentCommand } from '../urgent.ts';
import { urgentSaid } from '../urgent/said.ts';

/** Too much went in: first aid, and what the amount that was said did. What has no card of its own has the two steps. */
export function overdoseAnswer(
  what: 'overdose' | 'other overdose',
  { slots, reading }: Frame,
  context: OwnContext,
): Answer {
  const done = effectOf(slots, context);
  const raised = slots.salt === undefined ? [] : raisedBy(slots.salt);
  const hasCard = raised.length === 0 || raised.some((id) => WITH_CARD.has(id));
  if (done !== undefined && !hasCard) return { ...done, steps: IT_IS_IN };
  const said = urgentSaid(what, slots, reading);
  const card = call(urgentCommand, { what, ...said }, context);
  return done === undefined ? card : withEffect(card, done);
}

const WITH_CARD: ReadonlySet<string> = new Set(['alkalinity', 'calcium', 'magnesium']);

export const IT_IS_IN = [
  'It is in: add nothing more of anything, and do not add a second salt against it.',
  'Test now and again tomorrow; change a moderate part of the water if it reads far too high or animals suffer.',
] as const;

function effectOf({ salt, amount, volume }: Frame['slots'], context: OwnContext): Answer | undefined {
  if (salt === undefined || amount === undefined) return undefined;
  try {
    return call(effectCommand, { with: salt, amount, volume }, context);
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}

export function withEffect(card: Answer, done: Answer): Answer {
  return {
    ...card,
    read: [...done.read, ...card.read],
    facts: [{ label: 'what went in', value: done.headline }, ...card.facts],
    working: [...done.working, ...card.working],
    sources: [...new Set([...card.sources, ...done.sources])],
  };
}
