import type { Frame } from '../../../core/language/frame.ts';
import { raisedBy } from '../../../core/dosing/raised-by.ts';
import { met } from '../../../core/language/met.ts';
import { parameter } from '../../../core/water/parameter.ts';
import { say } from '../../../core/wording/say.ts';
import type { Answer } from '../../answer.ts';
import { action } from '../../calls.ts';
import type { OwnContext } from '../../command.ts';
import { amountCommand } from '../../dose/amount.ts';
import { solutionCommand } from '../../dose/solution.ts';
import { effectCommand } from '../../dose/effect.ts';
import { noDose } from '../../dose/no-dose.ts';
import { call } from '../../called.ts';
import { attempt } from './attempt.ts';
import { ofBottle } from './bottle-dose.ts';
import { stockSaid } from './stock-said.ts';
import { notUsedOf } from './levels-of.ts';
import { ownPace } from './own-pace.ts';
import { wantedIn, type Wanted } from './wanted.ts';

/** The dose for the first parameter that shall rise; what else was asked is said and one press away. */
export function amountFor(frame: Frame, context: OwnContext): Answer | undefined {
  const { slots, reading } = frame;
  const wanted = wantedIn(slots);
  const [first, ...rest] = wanted;
  if (first === undefined) return undefined;
  const { volume } = slots;
  const { of, now, goal } = first;
  // "lower alk by 2 dkh": what is wished lower is never raised.
  if (goal.startsWith('+') && met(reading.scanned, 'manner.lower'))
    return noDose(of, { now: undefined, goal: undefined, rise: -1, words: '', read: [] });
  const given =
    (slots.bottle?.of === of ? ofBottle(slots, { goal, now }, context) : undefined) ??
    ofStock(slots, { of, goal, now }, context) ??
    paced(frame, first, context);
  const { from } = ownPace(frame, of);
  const others = { ...slots, levels: slots.levels?.filter((level) => level !== from) };
  const left = notUsedOf(others, [...wanted.map((one) => one.of), 'salinity', 'temperature']);
  return withNamed(
    slots,
    withOthers(rest, volume, { ...given, unused: [...given.unused, ...left] }),
    context,
  );
}

/** The dose at the asker's own pace, where that is slower than the usual one; a faster one is said not to be used. */
function paced(frame: Frame, { of, now, goal, salt }: Wanted, context: OwnContext): Answer {
  const { volume, salinity } = frame.slots;
  const { pace, read } = ownPace(frame, of);
  const spoons = met(frame.reading.scanned, 'manner.unitSpoon') ? true : undefined;
  const given = call(amountCommand, { of, now, goal, with: salt, volume, salinity, pace, spoons }, context);
  return read === undefined
    ? given
    : { ...given, read: [read, ...given.read], steps: [`Go slower: ${read}.`, ...given.steps] };
}

/** Where the strength of a solution was said: its millilitres. */
function ofStock(
  slots: Frame['slots'],
  { of, goal, now }: Pick<Wanted, 'of' | 'goal' | 'now'>,
  context: OwnContext,
): Answer | undefined {
  const stock = slots.strength === undefined ? undefined : stockSaid(slots);
  if (stock === undefined || !raisedBy(stock.with).includes(of)) return undefined;
  return call(solutionCommand, { ...stock, of, goal, now, tank: slots.volume }, context);
}

/** Each dose is an answer of its own. */
function withOthers(rest: readonly Wanted[], volume: string | undefined, given: Answer): Answer {
  if (rest.length === 0) return given;
  const named = rest.map(({ of, now, goal }) => {
    const { label } = parameter(of);
    return now === undefined ? `${label} ${goal}` : say('ask.nowToGoal', { parameter: label, now, goal });
  });
  const next = rest.map(({ of, now, goal, salt }, index) =>
    action(say('ask.andDose', { dose: named[index] ?? '' }), 'dose amount', {
      of,
      now,
      goal,
      with: salt,
      volume,
    }),
  );
  const step = `This is for one of them: ${named.join(' and ')} is a dose of its own. Choose it below, and add them well apart.`;
  return { ...given, steps: [step, ...given.steps], next: [...given.next, ...next] };
}

/** An amount named beside the dose: what that would do. */
function withNamed(
  { salt, amount, strength, volume }: Frame['slots'],
  given: Answer,
  context: OwnContext,
): Answer {
  if (amount === undefined) return given;
  const effect =
    salt === undefined
      ? undefined
      : attempt(() => call(effectCommand, { with: salt, amount, strength, volume }, context));
  if (effect === undefined) return { ...given, unused: [amount, ...given.unused] };
  const facts = [...given.facts, { label: 'The amount you name', value: effect.headline }];
  if (volume !== undefined || !amount.endsWith(' g')) return { ...given, facts };
  const step = `If ${amount} is the tank and not the powder, write it as gallons: "${amount.replace(' g', '')} gal".`;
  return { ...given, facts, steps: [step, ...given.steps] };
}
