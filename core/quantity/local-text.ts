import { isGravity } from './marks.ts';

/**
 * Numbers and days of a text as somebody with this locale writes them (CLDR, through Intl): "8.2 dKH" is "8,2 dKH" for
 * de, "2026-06-01" is "1 Jun 2026" for en-GB. Clock times stay in 24 hours, whole numbers get no marks of thousands, and
 * what is no quantity keeps its point: DOIs, versions, addresses, file names, numbers of sections and tables; so does a
 * specific gravity. Without a locale nothing changes.
 *
 * @param text As our own code wrote it: a point before decimals, days as YYYY-MM-DD.
 */
export function localText(text: string, locale: string | undefined): string {
  if (locale === undefined) return text;
  const { mark, dayOf } = writingOf(locale);
  return text.replace(OURS, (whole, day: string | undefined, decimal: string | undefined, at: number) => {
    if (day !== undefined) return dayOf(day);
    if (decimal === undefined || isGravity(decimal, text.slice(at + whole.length))) return whole;
    return decimal.replace('.', mark);
  });
}

/**
 * In this order: names that keep their points (addresses, DOIs, what a book numbers, options of a command, dotted and
 * joined names), a day (ISO 8601, not within a time stamp or a longer number), a decimal number. "1.5x", "8.2/day" and
 * "0.04/0.056" are quantities.
 */
const OURS = new RegExp(
  [
    String.raw`(?:https?:|www\.|doi:)\S+|\b10\.\d{4,9}\/\S+`,
    String.raw`\b(?:tables?|tab\.?|sections?|chapters?|figures?|fig\.?|eqs?\.?|equations?|appendix|version|v) ?\d+(?:\.\d+)+`,
    String.raw`\b[a-z]+:[\d.]+|\b[a-z][\w-]*\.\w[\w.-]*|\d+(?:\.\d+){2,}|\d+\.\d+\.[a-z]\w*`,
    String.raw`(?<![\w./:-])(\d{4}-\d{2}-\d{2})(?![\w/:-]|\.\w)`,
    String.raw`(\d+\.\d+)`,
  ].join('|'),
  'gi',
);

interface Writing {
  /** What stands before decimals. */
  readonly mark: string;
  /** A day given as YYYY-MM-DD; one that no calendar has stays. */
  readonly dayOf: (iso: string) => string;
}

const writings = new Map<string, Writing>();

function writingOf(locale: string): Writing {
  const known = writings.get(locale);
  if (known !== undefined) return known;
  const found = Intl.getCanonicalLocales(locale);
  const mark = new Intl.NumberFormat(found, { numberingSystem: 'latn' })
    .formatToParts(0.5)
    .find(({ type }) => type === 'decimal')?.value;
  const days = new Intl.DateTimeFormat(found, {
    dateStyle: 'medium',
    timeZone: 'UTC',
    calendar: 'gregory',
    numberingSystem: 'latn',
  });
  const dayOf = (iso: string): string => {
    const atMs = Date.parse(`${iso}T00:00:00Z`);
    return Number.isNaN(atMs) || new Date(atMs).toISOString().slice(0, 10) !== iso ? iso : days.format(atMs);
  };
  const made = { mark: mark ?? '.', dayOf };
  writings.set(locale, made);
  return made;
}
