const UNIT = String.raw`(?<unit>day|days|d|night|morning|week|weeks|wk|month|months|mo|hour|hours|hr|h|min|minutes?|fortnight|evening|(?:mon|tues?|wednes|thurs?|fri|satur|sun)(?:days?)?)\b`;
/** "12 the week": none where a week of the calendar is meant, "the week before". */
const THE_UNIT = String.raw`(?<theUnit>week|wk|month|fortnight)\b(?!\s+(?:before|after|that|i|we|it|of|when|since|until|ago|later|from|around|they|she|he)\b)`;
const ADVERB = String.raw`(?<adverb>daily|weekly|monthly|hourly|nightly|biweekly|fortnightly)\b`;
const COUNTED = String.raw`(?<count>\d+(?:\.\d+)?|two|three|four|other|second|third)?\s*`;
const TIMES = String.raw`(?:(?<times>once|twice|thrice|(?:two|three|four|five|six|\d{1,2})\s?(?:times|x))\s+)?`;
/** How often, at most two words behind a number: "a day", "/d", "per week", "twice daily", "every 3 days", "by week", "the week". */
const RATE = new RegExp(
  String.raw`^\s*(?:of (?:[a-z]+ ){1,3}?|(?:[a-z]+\d? ){0,2}?(?:[a-z]+\d?(?=\/))?)${TIMES}(?:(?:\/\s*|p\/\s*|per\s*|(?:a|an|by|each|every)\s+)${COUNTED}${UNIT}|(?:(?:in|over|within|during)\s+)?(?:the|one)\s+${THE_UNIT}|${ADVERB})`,
);
/** The same in the words before a number, where no other number stands between: "each week I lose 3.5 L". */
const BEFORE = new RegExp(
  String.raw`(?:^|[.,;:!?(\n])[^.,;:!?(\n\d]*?\b${TIMES}(?:(?:per|each|every|(?<=(?:times|x|once|twice|thrice)\s)an?)\s+${COUNTED}${UNIT}|${ADVERB})(?!\s+(?:ago|back|old|later|until|till|for|since|from))[^.,;:!?(\n\d]{0,28}$`,
);
const DAYS: Readonly<Record<string, number>> = {
  min: 1 / 1440,
  minute: 1 / 1440,
  d: 1,
  day: 1,
  night: 1,
  evening: 1,
  morning: 1,
  week: 7,
  fortnight: 14,
  wk: 7,
  month: 30.4375,
  mo: 30.4375,
  hour: 1 / 24,
  hr: 1 / 24,
  h: 1 / 24,
  daily: 1,
  nightly: 1,
  weekly: 7,
  fortnightly: 14,
  biweekly: 14,
  monthly: 30.4375,
  hourly: 1 / 24,
};
const COUNT: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4, other: 2, second: 2, third: 3 };

/** Days between two times, said right behind a place of a folded text; undefined where none are. Check: "every 2 days" -> 2, "twice a week" -> 3.5. */
export function rateAt(text: string, at: number): number | undefined {
  return daysOf(RATE.exec(text.slice(at, at + 48))?.groups);
}

/** Days between two times, said before a number. Check: "each week I lose " before 3.5 -> 7. */
export function rateBefore(text: string, start: number): number | undefined {
  return daysOf(BEFORE.exec(text.slice(Math.max(0, start - 60), start))?.groups);
}

function daysOf(groups: Readonly<Record<string, string | undefined>> | undefined): number | undefined {
  if (groups === undefined) return undefined;
  const { count, unit, theUnit, adverb, times } = groups;
  const word = (adverb ?? unit ?? theUnit ?? '').replace(/(?<=[a-z]{3})s$/, '');
  const days = DAYS[word] ?? (/^(?:mon|tue|wed|thu|fri|sat|sun)/.test(word) ? 7 : undefined);
  const every = count === undefined ? 1 : (COUNT[count] ?? Number(count));
  return days === undefined ? undefined : (days * every) / timesOf(times);
}

const TIMES_SAID: Readonly<Record<string, number>> = {
  once: 1,
  twice: 2,
  thrice: 3,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
};

/** "twice" 2, "3 times" 3, "3x" 3; 1 where nothing was said. */
function timesOf(said: string | undefined): number {
  const word = said?.replace(/\s?(?:times|x)$/, '') ?? 'once';
  return TIMES_SAID[word] ?? Math.max(1, Number(word));
}
