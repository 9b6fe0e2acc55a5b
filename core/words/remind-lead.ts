import { classesOfWord } from '../language/lexicon/classes.ts';
import { scan, type Token } from '../language/tokens.ts';

/** Words before "remind" that only lead to it. */
const LEADS: ReadonlySet<string> = new Set(
  "can could would will you i i'd like want need a an another new one set make create add up please pls hey hi hello bot to me us".split(
    ' ',
  ),
);
/** Words behind it that lead to what it is of. */
const BEHIND: ReadonlySet<string> = new Set('me us myself to about of for that'.split(' '));
const REMINDS = ['deeds.reminds', 'parts.remind'];
const POLITE = ['manner.plea', 'manner.thanks'];

/**
 * A wish without the words that only ask for a reminder. Check: "can you remind me friday 8pm to feed, please" ->
 * "friday 8pm to feed", "water change reminder every 2 weeks" -> "water change every 2 weeks".
 */
export function wishWords(text: string): string {
  const { tokens } = scan(text);
  const at = tokens.findIndex((token) => isOf(token, REMINDS));
  const end = text.length - politeEnd(text, tokens);
  const found = tokens[at];
  if (found === undefined) return text.slice(0, end).trim();
  let next = at + 1;
  while (BEHIND.has(tokens[next]?.word ?? '')) next++;
  const behind = text.slice(tokens[next]?.start ?? end, end);
  const isLead = tokens.slice(0, at).every(({ word }) => LEADS.has(word) || word === ',');
  return (isLead ? behind : `${text.slice(0, found.start)} ${behind}`).replace(/\s+/g, ' ').trim();
}

/** Letters of "please" and "thanks" at the end. */
function politeEnd(text: string, tokens: readonly Token[]): number {
  let at = tokens.length;
  while (at > 1 && (isOf(tokens[at - 1], POLITE) || /^[.,!]$/.test(tokens[at - 1]?.word ?? ''))) at--;
  const last = tokens[at - 1];
  return at === tokens.length || last === undefined ? 0 : text.length - last.end;
}

function isOf(token: Token | undefined, classes: readonly string[]): boolean {
  return token !== undefined && classesOfWord(token.word).some((name) => classes.includes(name));
}
