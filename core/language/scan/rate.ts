/** How often, at most two words behind a number: "a day", "/d", "per week", "daily", "every 3 days", "twice a week". */
const RATE =
  /^\s*(?:of (?:[a-z]+ ){1,2}|(?:[a-z]+\d? ){0,2}?(?:[a-z]+\d?(?=\/))?)(?:(?<often>once|twice|thrice|(?:\d|two|three|four|five) ?(?:times|x)) )?(?:(?:\/\s*|p\/\s*|per\s*|(?:a|an|by|each|every)\s+)(?<count>\d+(?:\.\d+)?|two|three|four|other|second|third)?\s*(?<unit>day|days|d|night|morning|week|weeks|wk|month|months|mo|hour|hours|hr|h|min|minutes?|fortnight|evening|(?:mon|tues?|wednes|thurs?|fri|satur|sun)(?:days?)?)\b|(?<adverb>daily|weekly|monthly|hourly|nightly|biweekly|fortnightly)\b)/;
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

/** How many times: "twice", "3x", "three times"; once where nothing was said. */
function oftenOf(words: string | undefined): number {
  if (words === undefined) return 1;
  const [first = ''] = words.split(/[ x]/);
  return OFTEN[first] ?? Number(/^\d/.exec(first)?.[0] ?? 1);
}

const OFTEN: Readonly<Record<string, number>> = {
  once: 1,
  twice: 2,
  thrice: 3,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
};

/** Days between two times, said right behind a place of a folded text; undefined where none are. Check: "every 2 days" -> 2, "twice a week" -> 3.5. */
export function rateAt(text: string, at: number): number | undefined {
  const groups = RATE.exec(text.slice(at, at + 48))?.groups;
  if (groups === undefined) return undefined;
  const { count, unit, adverb, often } = groups;
  const word = (adverb ?? unit ?? '').replace(/(?<=[a-z]{3})s$/, '');
  const days = /^(?:mon(?!th)|tue|wed|thu|fri|sat|sun)/.test(word) ? 7 : DAYS[word];
  const times = count === undefined ? 1 : (COUNT[count] ?? Number(count));
  return days === undefined ? undefined : (days * times) / oftenOf(often);
}
