import type { Found } from '../../core/care/symptoms/rank.ts';
import type { Slots } from '../../core/language/slots.ts';
import { printed, readLogged } from '../../core/log/value.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { parameter } from '../../core/water/parameter.ts';
import { readOrName } from '../urgent/not-used.ts';
import { SWINGS, WEEK_DAYS } from './log-evidence.ts';

/** Levels told as they were and as they are, where they moved more than is usual within a week. */
export function movedSaid({ levels = [], spans = [] }: Slots): readonly Found[] {
  const days = spans.map((text) =>
    readOrName('time', text, (given) => readQuantity('days', given, { field: 'time' }).value, []),
  );
  if (days.some((each) => each !== undefined && each > WEEK_DAYS)) return [];
  return SWINGS.flatMap(([id, most, sign]) => {
    const [was, now] = (['was', 'now'] as const).map((part) => {
      const text = levels.findLast((level) => level.of === id && level.part === part)?.text;
      return text === undefined ? undefined : readOrName(id, text, (given) => readLogged(id, given, id), []);
    });
    if (was === undefined || now === undefined || Math.abs(now.value - was.value) <= most) return [];
    const { label } = parameter(id);
    return [
      { sign, text: `you said: ${label} went from ${printed(id, was.value)} to ${printed(id, now.value)}` },
    ];
  });
}
