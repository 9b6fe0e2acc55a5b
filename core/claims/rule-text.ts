import { clean } from '../quantity/clean.ts';

/** A number inside a pattern. */
export const NUM = String.raw`(\d+(?:\.\d+)?|\.\d+)`;
/** "is", "equals", "gives", "is about the same as": what a rule says between its two sides. */
export const IS = String.raw`\s*(?:=|\b(?:is|are|equals?|means?|makes?|gives?|reads?|as)\b)(?:\s+(?:the same as|same as|about|around|roughly|exactly|always|really|basically|like|equal to|worth|a|an))*\s*`;

const COUNTS: Readonly<Record<string, string>> = {
  one: '1',
  two: '2',
  three: '3',
  four: '4',
  five: '5',
  six: '6',
  seven: '7',
  eight: '8',
  nine: '9',
  ten: '10',
  twelve: '12',
  twenty: '20',
  thirty: '30',
  fifty: '50',
  hundred: '100',
};
const PARTS: Readonly<Record<string, string>> = { '½': '0.5', '¼': '0.25', '¾': '0.75', '⅓': '0.333' };

/** Units that follow "per", "a", "each" without a number of their own. */
const ALONE = String.raw`us gal(?:lon)?|imp(?:erial)? gal(?:lon)?|gal(?:lon)?|g(?=\b(?!\/))|lit(?:er|re)|l|quart|cups?|tsp|teaspoons?|tbsp|tablespoons?|gram|dkh|meq(?:\/l)?|ppt|psu|par`;

/**
 * A rule brought to one form: one alphabet (clean.ts), number words and fractions as decimals, "per gallon" as
 * "per 1 gallon", "twice" as "2 times". "Half a cup of salt per gallon" -> "0.5 cup of salt per 1 gallon".
 */
export function ruleText(given: string): string {
  return clean(given.replace(/[½¼¾⅓]/g, (part) => ` ${PARTS[part] ?? ''} `))
    .replace(/(\d),(\d{3})(?!\d)/g, (whole, a: string, b: string) => (b.startsWith('0') ? whole : a + b))
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(/\b(\d+) (\d)\/(\d)\b/g, (_, whole: string, top: string, low: string) => parts(top, low, whole))
    .replace(/(?<![\d.:/])([1-3])\/([2-8])(?![\d/])/g, (_, top: string, low: string) => parts(top, low, '0'))
    .replace(/\b(?:per ?cent|pct)\b/g, '%')
    .replace(/\b(?:a |one )?half an? /g, '0.5 ')
    .replace(/\b(?:a |one )?half (?=cup|tsp|teaspoon)/g, '0.5 ')
    .replace(/\b(?:a |one )?quarter (?:of an? |an? )?(?=cup|tsp|teaspoon)/g, '0.25 ')
    .replace(/\bone and a half\b/g, '1.5')
    .replace(/\b(?:twice|double)\b/g, '2 times')
    .replace(/\bhalf as\b/g, '0.5 times as')
    .replace(/\bhalf (?=the (?:amount|weight|dose|grams)|of it\b)/g, '0.5 times ')
    .replace(/\bin half\b|\bby half\b/g, 'by 50 %')
    .replace(/\b([a-z]+)\b/g, (word) => COUNTS[word] ?? word)
    .replace(
      new RegExp(String.raw`\b(per|an?|each|every|\/)\s+(?=(?:${ALONE})\b)`, 'g'),
      (_, word: string) => (/^an?$/.test(word) ? '1 ' : `${word} 1 `),
    )
    .replace(/\/\s?(?=gal(?:lon)?\b)/g, ' per 1 ')
    .replace(/\s+/g, ' ')
    .trim();
}

function parts(top: string, low: string, whole: string): string {
  return String(Number((Number(whole) + Number(top) / Number(low)).toFixed(4)));
}

/** "in my 75 gal": the asker's tank, taken out of the rule so that it is not read as part of it. */
const MY_TANK =
  /[,.;]?\s*\b(?:in|for|on|to|with|i have|i've got)\s+(?:my|our|a)?\s*(?<=\b(?:my|our|have a|got a)\s*)(\d+(?:\.\d+)?\s?(?:us gal|imp gal|gal(?:lon)?s?|g|l|lit(?:er|re)s?)\b)(?:\s+(?:tank|reef|system|display))?/;

/** The rule without the tank it is asked for, and that tank's volume as text. */
export function withoutTank(text: string): { readonly rule: string; readonly volume: string | undefined } {
  const cleaned = clean(text);
  const found = MY_TANK.exec(cleaned);
  if (found === null) return { rule: text, volume: undefined };
  return {
    rule: `${cleaned.slice(0, found.index)} ${cleaned.slice(found.index + found[0].length)}`.trim(),
    volume: found[1],
  };
}

/** Numbers caught by a pattern, in order; undefined where it does not occur. */
export function numbersIn(text: string, ...patterns: readonly RegExp[]): readonly number[] | undefined {
  for (const pattern of patterns) {
    const found = pattern.exec(text);
    if (found !== null)
      return found
        .slice(1)
        .filter((part) => part !== undefined)
        .map(Number);
  }
  return undefined;
}
