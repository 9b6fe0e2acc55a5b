import { findCompound, type Compound } from '../../core/dosing/compound.ts';
import type { Answer } from '../answer.ts';
import type { Context } from '../command.ts';
import { effectCommand } from '../dose/effect.ts';
import { cardAnswer } from '../urgent/card-answer.ts';
import type { overdosable } from '../urgent/input.ts';
import { notUsed, readOrName } from '../urgent/not-used.ts';

interface Overdose {
  readonly what?: string | undefined;
  readonly amount?: string | undefined;
  readonly strength?: string | undefined;
  readonly volume?: string | undefined;
  readonly now?: string | undefined;
  readonly of?: (typeof overdosable)[number] | undefined;
}

/** A salt that is dosed, or what it raises: first aid, and what the amount did. Undefined for anything else. */
export function overdosedWith(input: Overdose, context: Context): Answer | undefined {
  const { what = '', amount, strength, volume, now } = input;
  const found = findCompound(what);
  const forms = found === undefined ? [] : 'atoms' in found ? [found] : found;
  const of = input.of ?? carded(forms);
  if (of === undefined && forms.length === 0) return undefined;
  const left =
    amount !== undefined && forms.length === 0
      ? [notUsed('amount', amount, 'without its salt nobody can say what it does')]
      : [];
  const run = (text: string): Answer =>
    effectCommand.run(given({ with: what, amount: text, strength, volume }), context);
  const done = forms.length === 0 ? undefined : readOrName('amount', amount, run, left);
  if (of !== undefined) return withEffect(cardAnswer('overdose', { of, now, volume }), done, left);
  return done === undefined ? undefined : { ...done, steps: IT_IS_IN, unused: [...left, ...done.unused] };
}

/** What has a card: the salts that can crash the chemistry of a tank within the hour. */
function carded(forms: readonly Compound[]): Overdose['of'] {
  if (forms.some(({ hazard }) => hazard === 'lime')) return 'limewater';
  return (['alkalinity', 'calcium'] as const).find((id) => forms.some(({ raises }) => raises.includes(id)));
}

const IT_IS_IN = [
  'It is in: add nothing more of anything, and do not add a second salt against it.',
  'Test now and again tomorrow; change a moderate part of the water if it reads far too high or animals suffer.',
];

function withEffect(card: Answer, done: Answer | undefined, left: readonly string[]): Answer {
  if (done === undefined) return { ...card, unused: [...left, ...card.unused] };
  return {
    ...card,
    unused: [...left, ...card.unused],
    facts: [{ label: 'what went in', value: done.headline }, ...card.facts],
    read: [...done.read, ...card.read],
    working: [...done.working, ...card.working],
    sources: [...new Set([...card.sources, ...done.sources])],
  };
}

function given(input: Readonly<Record<string, string | undefined>>): Readonly<Record<string, string>> {
  const entries = Object.entries(input).filter((entry): entry is [string, string] => entry[1] !== undefined);
  return Object.fromEntries(entries);
}
