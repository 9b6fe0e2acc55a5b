import type { CycleTest } from '../../../core/care/cycle.ts';

const DATE =
  /(?<![\d.])(?:\d{1,2}[/-]\d{1,2}(?:[/-]\d{2,4})?|\d{4}-\d{2}-\d{2}|day \d{1,3}|(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]* \d{1,2}|week \d{1,2})(?![\d.])/g;
const NAMES = {
  ammonia: 'ammonia|ammonium|amm|nh3|nh4|tan',
  nitrite: 'nitrites?|no2',
  nitrate: 'nitrates?|no3',
} as const;
const NUMBER = String.raw`(\d+(?:[.,]\d+)?|zero|none|nil)`;

/** Tests with their days, in the order written; each needs ammonia and nitrite. The days are not sorted. */
export function cycleLog(text: string): readonly CycleTest[] {
  const dates = [...text.matchAll(DATE)];
  const parts =
    dates.length === 0
      ? [{ when: 'last test', part: text }]
      : dates.map((date, place) => ({
          when: date[0],
          part: text.slice(date.index + date[0].length, dates[place + 1]?.index),
        }));
  return parts.flatMap(({ when, part }): CycleTest[] => {
    const ammonia = levelIn('ammonia', part);
    const nitrite = levelIn('nitrite', part);
    if (ammonia === undefined || nitrite === undefined) return [];
    return [{ when, ammonia, nitrite, nitrate: levelIn('nitrate', part) }];
  });
}

/** "amm 4.0", "ammonia: 0", "no2 = zero". */
export function levelIn(id: keyof typeof NAMES, part: string): number | undefined {
  const found = new RegExp(
    String.raw`(?<![a-z0-9])(?:${NAMES[id]})(?:\s*(?:levels?|is|at|was|reads?|reading|went|up|now|to|of|about|=|:))*\s*~?${NUMBER}(?![\d])`,
  ).exec(part)?.[1];
  if (found === undefined) return undefined;
  return /\d/.test(found) ? Number(found.replace(',', '.')) : 0;
}
