import { Problem } from '../problem.ts';
import { clean } from '../quantity/clean.ts';
import { instantOf } from '../schedule/zone.ts';
import { say } from '../wording/say.ts';
import type { RepeatContext } from './repeat-said.ts';
import { readRepeat } from './repeat.ts';

/** A moment to come. */
export interface Moment {
  readonly atMs: number;
  readonly notes: readonly string[];
}

const SPAN = /^(?:\d{1,4}|an?|one|two|three) ?(?:min(?:ute)?s?|hours?|hrs?|h|days?|weeks?|months?)$/;
const NOW = /^(?:now|today|at once)$/;

/**
 * Reads one moment to come: "in 3 days", "2 weeks", "10 jan", "sunday 18:00", "tomorrow", "now". A day without an hour
 * is `usualTime`.
 *
 * @throws Problem for what repeats, is past, or cannot be read whole.
 */
export function readMoment(text: string, context: RepeatContext): Moment {
  const said = clean(text).replace(/^(?:until|till|to|from) /, '');
  if (NOW.test(said)) return { atMs: context.nowMs, notes: [] };
  const { rule, anchor, rest, notes } = readRepeat(SPAN.test(said) ? `in ${said}` : said, context);
  if (rule.every === 'once' && rest === '') return { atMs: instantOf(anchor, context.zone), notes };
  throw new Problem(say('parse.oneMoment'), {
    field: context.field,
    given: text,
    hint: say('parse.hintMoments'),
  });
}
