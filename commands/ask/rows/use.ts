import { compoundsFor } from '../../../core/dosing/compound.ts';
import type { Frame } from '../../../core/language/frame.ts';
import type { SlotName } from '../../../core/language/slots.ts';
import { parameter, type ParameterId } from '../../../core/water/parameter.ts';
import { Problem } from '../../../core/problem.ts';
import { say } from '../../../core/wording/say.ts';
import type { Answer, Fact } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { dailyCommand } from '../../dose/daily.ts';
import { useCommand } from '../../dose/use.ts';
import { untilCommand } from '../../water/until.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { attempt } from './attempt.ts';
import { addedOfBottle, heldUp, ofBottle } from './bottle-dose.ts';
import { besidesDose } from './beside-dose.ts';
import { byLabel, hasLabel } from './by-label.ts';
import { led } from './led.ts';
import { levelsOf, readTwice } from './levels-of.ts';
import { withRemarks } from './said-remarks.ts';
import { fallRate, perDays, spanSaid } from './span-said.ts';
import { ofStock } from './daily-stock.ts';
import { addedADay, oftenSaid } from './stock-said.ts';
import { timeOfUse } from './use-time.ts';
import { saltFor } from './wanted.ts';

const READINGS: readonly SlotName[] = [
  'of',
  'levels',
  'was',
  'now',
  'change',
  'rate',
  'rateDays',
  'span',
  'spans',
];
const ADDED: readonly SlotName[] = [
  'moments',
  'volume',
  'salt',
  'amount',
  'amountDays',
  'strength',
  'bottle',
  'container',
  'changed',
  'share',
  'other',
];

export const useRows: readonly Row[] = [
  {
    kind: 'dose-use',
    label: 'ask.kindDoseUse',
    needs: [
      {
        oneOf: ['was', 'change', 'rate'],
        ask: 'ask.twoReadings',
        when: ({ slots }) => readTwice(slots) === undefined,
      },
      { oneOf: ['span', 'moments', 'rate'], ask: 'ask.timeBetween' },
    ],
    uses: [...READINGS, ...ADDED],
    answer: (frame, context) => useOf(frame, context) ?? daily(frame, context),
  },
  {
    kind: 'dose-daily',
    label: 'ask.kindDoseDaily',
    needs: [
      {
        oneOf: ['rate', 'was', 'change'],
        ask: 'ask.usesADay',
        when: (frame) => !hasLabel(frame),
      },
      timeOfUse,
    ],
    uses: [...READINGS, ...ADDED],
    answer: (frame, context) => byLabel(frame, context) ?? daily(frame, context) ?? useOf(frame, context),
  },
];

/** From two readings and the time between them, with what was added meanwhile. @throws Problem where no time is known. */
function useOf(frame: Frame, context: OwnContext): Answer | undefined {
  const { of, amount, amountDays, salt, volume } = frame.slots;
  const twice = readTwice(frame.slots);
  if (of === undefined || twice === undefined) return undefined;
  const over = spanSaid(frame.slots, context);
  if (over === undefined)
    throw new Problem(say('ask.timeBetween'), {
      field: 'over',
      hint: say('ask.hintTimeBetween'),
    });
  const often = amountDays === undefined ? '' : ` ${oftenSaid(amountDays)}`;
  const { bottle } = frame.slots;
  const byBottle = bottle?.of === of ? addedOfBottle(frame.slots, context) : undefined;
  const byWeight = byBottle === undefined ? addedADay(frame.slots) : undefined;
  const added = byBottle ?? byWeight;
  const changed = frame.slots.changed ?? frame.slots.share;
  const mix = frame.slots.other;
  const input = {
    of,
    before: twice.was,
    now: twice.now,
    over,
    volume,
    ...(changed === undefined || mix === undefined ? {} : { changed, new: mix }),
    ...(added === undefined ? {} : { amount: added, with: byWeight === undefined ? undefined : salt }),
  };
  const one = withRemarks(frame, call(useCommand, input, context));
  const given = withChange(
    { ...one, facts: [...one.facts, ...alsoUsed(frame, of, over, context)] },
    changed,
    mix,
  );
  if (amount === undefined || added !== undefined) return given;
  const told = led(`Besides the ${amount}${often} you dosed:`, given);
  return {
    ...told,
    unused: [
      `${amount}${often} (its salt or strength was not said; what it raises comes on top)`,
      ...given.unused,
    ],
  };
}

/** A change of water whose new water was not said is named before the use that leaves it out. */
function withChange(given: Answer, changed: string | undefined, mix: string | undefined): Answer {
  if (changed === undefined || mix !== undefined) return given;
  return {
    ...led(`Without the water change of ${changed}:`, given),
    steps: ['Say what the new water reads, and the change is counted in.', ...given.steps],
  };
}

/** The use of other parameters of which two readings were said, too. */
function alsoUsed({ slots }: Frame, of: ParameterId, over: string, context: OwnContext): readonly Fact[] {
  const others = [...new Set((slots.levels ?? []).map((level) => level.of))].filter((id) => id !== of);
  return others.flatMap((id): Fact[] => {
    const [before, now] = [levelsOf(slots, id, 'was').at(0)?.text, levelsOf(slots, id, 'now').at(-1)?.text];
    if (before === undefined || now === undefined) return [];
    const given = attempt(() =>
      call(useCommand, { of: id, before, now, over, volume: slots.volume }, context),
    );
    return given === undefined ? [] : [{ label: parameter(id).label, value: given.headline }];
  });
}

/** From a use that is known, or a fall in a known time; where a level and its end were named, when it gets there. */
function daily(frame: Frame, context: OwnContext): Answer | undefined {
  const { of, now, limit, wanted, change } = frame.slots;
  const use = fallRate(frame.slots, context) ?? (frame.kind === 'dose-daily' ? change : undefined);
  if (of === undefined || use === undefined || compoundsFor(of).length === 0) return undefined;
  const bottled = frame.kind === 'dose-use' ? heldUp(frame.slots, of, use, context) : undefined;
  if (bottled !== undefined) return bottled;
  const end = limit ?? wanted;
  if (now !== undefined && end !== undefined && Number.parseFloat(end) < Number.parseFloat(now))
    return call(untilCommand, { of, now, use, goal: end }, context);
  const given =
    (frame.slots.bottle?.of === of ? ofBottle(frame.slots, { use }, context) : undefined) ??
    ofStock(frame.slots, { of, use }, context) ??
    replaced(frame, of, use, context);
  const { facts, unused } = besides(frame, of, context);
  const all = { ...given, facts: [...given.facts, ...facts], unused: [...given.unused, ...unused] };
  return withRemarks(frame, besidesDose(frame, of, all));
}

function replaced({ slots }: Frame, of: ParameterId, use: string, context: OwnContext): Answer {
  return call(dailyCommand, { of, use, with: saltFor(slots, of), volume: slots.volume }, context);
}

/** The same for the uses of other parameters that were said. */
function besides(frame: Frame, of: ParameterId, context: OwnContext): Pick<Answer, 'facts' | 'unused'> {
  const { levels = [] } = frame.slots;
  const others = levels.filter(
    (level) => level.of !== of && (level.part === 'rate' || level.part === 'change'),
  );
  const facts: Fact[] = [];
  const unused: string[] = [];
  for (const level of others) {
    const use = level.everyDays === undefined ? level.text : perDays(level.text, level.everyDays);
    const given = attempt(() => replaced(frame, level.of, use, context));
    const { label } = parameter(level.of);
    if (given === undefined) unused.push(`${label} ${level.text}`);
    else facts.push({ label, value: given.headline });
  }
  return { facts, unused };
}
