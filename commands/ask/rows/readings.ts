import { primer } from '../../../core/care/primers/cards.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { asksThreshold } from '../../../core/language/threshold.ts';
import { readLogged } from '../../../core/log/value.ts';
import type { ParameterId } from '../../../core/water/parameter.ts';
import type { Answer } from '../../answer.ts';
import { actAtAnswer } from '../../checkup/act-at.ts';
import { usualAnswer } from '../../checkup/usual-answer.ts';
import type { OwnContext } from '../../command.ts';
import { zeroNutrients } from '../../dose/zero-nutrients.ts';
import { cardAnswer, openCard } from '../../primer/card-answer.ts';
import { goalCommand } from '../../waterchange/goal.ts';
import { onceCommand } from '../../waterchange/once.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { attempt } from './attempt.ts';
import { byLabel } from './by-label.ts';
import { amountFor } from './dose-for.ts';
import { exportChoice } from './export-choice.ts';
import { judgedFrame } from './judged-frame.ts';
import { levelsOf, notUsedOf } from './levels-of.ts';
import { asksPace, paceSaid } from './pace.ts';
import { withRemarks } from './said-remarks.ts';
import { shareSaid, systemSaid } from './water-said.ts';

export const readingRows: readonly Row[] = [
  {
    kind: 'readings-ok',
    label: 'ask.kindReadingsOk',
    needs: [
      {
        oneOf: ['levels', 'of'],
        ask: 'ask.whichReadings',
        when: ({ reading: { scanned } }) => !met(scanned, 'sums.parameter'),
      },
    ],
    uses: ['levels', 'of', 'now', 'was', 'salinity', 'temperature', 'corals', 'volume', 'span', 'spans'],
    answer: (frame, context) =>
      actAtSaid(frame, context) ?? judgedFrame(frame, context) ?? usualAnswer(named(frame), context.keep),
  },
  {
    kind: 'nutrients',
    label: 'ask.kindNutrients',
    uses: [
      'levels',
      'of',
      'now',
      'was',
      'wanted',
      'change',
      'volume',
      'share',
      'changed',
      'everyDays',
      'amount',
    ],
    computes: ({ slots: { levels } }) => levels !== undefined,
    answer: (frame, context) => {
      if (frame.slots.of !== undefined && asksPace(frame)) return paceSaid(frame, context);
      const actAt = actAtSaid(frame, context);
      if (actAt !== undefined) return { ...actAt, next: [...actAt.next, openCard('nutrients')] };
      const sum = towards(frame, context);
      const unused = notUsedOf(frame.slots, frame.slots.of === undefined ? [] : [frame.slots.of]);
      const wished =
        exportChoice(frame) ??
        byLabel(frame, context) ??
        bothZero(frame, context) ??
        (sum && { ...sum, unused: [...sum.unused, ...unused] });
      const given = wished ?? judgedFrame(frame, context);
      if (given === undefined) return cardAnswer(primer('nutrients'));
      return { ...given, next: [...given.next, openCard('nutrients')] };
    },
  },
];

/** What a message names to be measured, each once. */
function named({ slots: { of }, reading: { scanned } }: Frame): readonly ParameterId[] {
  const ids = scanned.names.flatMap((name) => (name.class === 'parameter' ? [name.id as ParameterId] : []));
  return [...new Set([...(of === undefined ? [] : [of]), ...ids])];
}

/** At which level of the one thing it names to act; undefined where nothing asks so, or a goal was said. */
function actAtSaid(frame: Frame, context: OwnContext): Answer | undefined {
  const { slots, reading } = frame;
  const [id, other] = named(frame);
  const isGoal = slots.wanted !== undefined || slots.change !== undefined;
  if (id === undefined || other !== undefined || isGoal || !asksThreshold(reading.scanned)) return undefined;
  // "what temp do I panic at, 27.5?": the number beside the question is what it reads, or may.
  const number = slots.now ?? slots.limit;
  const said = number === undefined ? undefined : attempt(() => readLogged(id, number, id).value);
  const given = said === undefined ? undefined : judgedFrame(frame, context);
  return actAtAnswer(id, said, given ?? usualAnswer([id], context.keep));
}

/** Nitrate and phosphate read none, and a dose is asked about. */
function bothZero(frame: Frame, context: OwnContext): Answer | undefined {
  const { slots, reading } = frame;
  const isNone = (id: ParameterId): boolean => levelsOf(slots, id, 'now').at(-1)?.value === 0;
  const both = (['nitrate', 'phosphate'] as const).filter(isNone);
  const isAsked = met(reading.scanned, 'deeds.doses', 'parts.dosed', 'manner.rise');
  const isNamed = named(frame).includes('nitrate') && named(frame).includes('phosphate');
  if (both.length === 0 || !isAsked || !(both.length === 2 || (isNamed && saysOnce(frame)))) return undefined;
  return withRemarks(frame, zeroNutrients(systemSaid(slots, context), context));
}

/** "no3 and po4 both read zero": one number for both. */
function saysOnce({ slots: { levels = [] } }: Frame): boolean {
  return levels.length === 1;
}

/** A goal that was said: by water changes where it lies lower, by a dose where it lies higher. */
function towards(frame: Frame, context: OwnContext): Answer | undefined {
  const { of, now, was, wanted, change, volume, other } = frame.slots;
  if (of !== 'nitrate' && of !== 'phosphate') return undefined;
  const reads = now ?? was;
  const isLower =
    wanted !== undefined && reads !== undefined && Number.parseFloat(wanted) < Number.parseFloat(reads);
  if (!isLower) return wanted === undefined && change === undefined ? undefined : amountFor(frame, context);
  const levels = { of, now: reads, goal: wanted, volume, fresh: other };
  const said = shareSaid(frame.slots, context);
  return said === undefined
    ? call(onceCommand, levels, context)
    : call(goalCommand, { ...levels, ...said }, context);
}
