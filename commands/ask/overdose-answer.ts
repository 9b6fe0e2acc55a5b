import type { Frame } from '../../core/language/frame.ts';
import { raisedBy } from '../../core/dosing/raised-by.ts';
import { call } from '../called.ts';
import type { Answer } from '../answer.ts';
import type { OwnContext } from '../command.ts';
import { effectCommand } from '../dose/effect.ts';
import { urgentCommand } from '../urgent.ts';
import { dosedLevels } from '../urgent/input.ts';
import { urgentSaid } from '../urgent/said.ts';
import { attempt } from './rows/attempt.ts';
import { strengthSaid } from './rows/stock-said.ts';

/** Too much went in: first aid, and what the amount that was said did. What has no card of its own has the two steps. */
export function overdoseAnswer(
  what: 'overdose' | 'other overdose',
  { slots, reading }: Frame,
  context: OwnContext,
): Answer {
  const done = effectOf(slots, context);
  const raised = slots.salt === undefined ? [] : raisedBy(slots.salt);
  const hasCard = raised.length === 0 || dosedLevels.some((id) => raised.includes(id));
  if (done !== undefined && !hasCard) return { ...done, steps: IT_IS_IN };
  const said = urgentSaid(what, slots, reading);
  const card = call(urgentCommand, { what, ...said }, context);
  return done === undefined ? card : withEffect(card, done);
}

const IT_IS_IN = [
  'It is in: add nothing more of anything, and do not add a second salt against it.',
  'Test now and again tomorrow; change a moderate part of the water if it reads far too high or animals suffer.',
] as const;

function effectOf(slots: Frame['slots'], context: OwnContext): Answer | undefined {
  const { salt, volume, was } = slots;
  const amount = mostOf(slots);
  if (salt === undefined || amount === undefined) return undefined;
  return attempt(() => {
    const strength = strengthSaid(slots);
    return call(effectCommand, { with: salt, amount, strength, volume, now: was }, context);
  });
}

/** Of several amounts in one unit the largest: beside what should have gone in, or is left, stands what may have. */
function mostOf({ amount, amounts = [] }: Frame['slots']): string | undefined {
  const unit = unitOf(amount ?? '');
  const [most] = amounts
    .filter((text) => unitOf(text) === unit)
    .toSorted((a, b) => Number.parseFloat(b) - Number.parseFloat(a));
  return most ?? amount;
}

function unitOf(text: string): string {
  return text.replace(/^[\d.]+\s*/, '');
}

function withEffect(card: Answer, done: Answer): Answer {
  return {
    ...card,
    read: [...done.read, ...card.read],
    unused: [...done.unused, ...card.unused],
    facts: [{ label: 'what went in', value: done.headline }, ...card.facts],
    working: [...done.working, ...card.working],
    sources: [...new Set([...card.sources, ...done.sources])],
  };
}
