import type { Frame } from '../../../core/language/frame.ts';
import { classesIn } from '../../../core/language/lexicon/classes.ts';
import { met, type Met } from '../../../core/language/met.ts';
import type { Said } from '../../../core/language/said.ts';
import { parameter, type ParameterId } from '../../../core/water/parameter.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { watchCommand } from '../../log/watch.ts';
import { own } from './own.ts';

const TOLD: readonly Met[] = ['parts.remind', 'deeds.watches'];

/**
 * "tell me if nitrate goes over 20": a border to be told of, whatever part its number was taken for; and what is
 * watched, and its end. Undefined where nothing is to be watched.
 */
export function watchSaid({ slots: { of }, reading }: Frame, context: OwnContext): Answer | undefined {
  const { scanned, said } = reading;
  if (met(scanned, 'deeds.watches') && said.length === 0) {
    const input = { of: of === undefined ? undefined : parameter(of).label };
    if (met(scanned, 'deeds.cancels') && of !== undefined)
      return own('ask.stopWatching', watchCommand, { ...input, stop: 'yes' }, context);
    return met(scanned, 'manner.askWhich', 'manner.asksBot', 'deeds.shows')
      ? own('ask.whatIsWatched', watchCommand, {}, context)
      : undefined;
  }
  const isCondition = met(scanned, 'manner.supposition', 'manner.askWhen');
  if (of === undefined || !isCondition || !met(scanned, ...TOLD)) return undefined;
  const borders = said.filter((one) => isLevelOf(one, of));
  const [over, under] = [
    borders.find((one) => isOver(frameWords(reading, one))),
    borders.find((one) => !isOver(frameWords(reading, one))),
  ];
  if (over === undefined && under === undefined) return undefined;
  return own(
    'ask.watchIt',
    watchCommand,
    { of: parameter(of).label, over: over?.text, under: under?.text },
    context,
  );
}

function isLevelOf({ of, part, number }: Said, id: ParameterId): boolean {
  return of === id && part !== 'rate' && number.everyDays === undefined;
}

/** The words between the number before it and a number. */
function frameWords({ scanned, said }: Frame['reading'], { number }: Said): ReadonlySet<string> {
  const before = said.findLast((one) => one.number.end <= number.start)?.number.end ?? 0;
  const words = scanned.tokens.filter(({ start, end }) => start >= before && end <= number.start);
  return new Set(classesIn(words.map(({ word }) => word)).flat());
}

const DOWN = [
  'manner.under',
  'places.under',
  'events.wentDown',
  'sums.fallBy',
  'manner.lower',
  'sums.least',
  'manner.low',
];

function isOver(classes: ReadonlySet<string>): boolean {
  return !DOWN.some((name) => classes.has(name));
}
