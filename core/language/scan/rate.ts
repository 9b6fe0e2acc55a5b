/** How often, at most two words behind a number: "a day", "/d", "per week", "daily", "every 3 days", "by week". */
const RATE =
  /^\s*(?:of (?:[a-z]+ ){1,2}|(?:[a-z]+ ){0,2}?)(?:(?:\/\s*|p\/\s*|per\s*|(?:a|an|by|each|every)\s+)(?<count>\d+(?:\.\d+)?|two|three|four|other|second|third)?\s*(?<unit>day|days|d|night|morning|week|weeks|wk|month|months|mo|hour|hours|hr|h|(?:mon|tues?|wednes|thurs?|fri|satur|sun)(?:days?)?)\b|(?<adverb>daily|weekly|monthly|hourly|nightly|biweekly|fortnightly)\b)/;
const DAYS: Readonly<Record<string, number>> = {
  d: 1,
  day: 1,
  night: 1,
  morning: 1,
  week: 7,
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

/** Days between two times, said right behind a place of a folded text; undefined where none are. Check: "2 days" -> 2. */
export function rateAt(text: string, at: number): number | undefined {
  const groups = RATE.exec(text.slice(at, at + 48))?.groups;
  if (groups === undefined) return undefined;
  const { count, unit, adverb } = groups;
  const word = (adverb ?? unit ?? '').replace(/(?<=[a-z]{3})s$/, '');
  const days = /^(?:mon|tue|wed|thu|fri|sat|sun)/.test(word) ? 7 : DAYS[word];
  const times = count === undefined ? 1 : (COUNT[count] ?? Number(count));
  return days === undefined ? undefined : days * times;
}
