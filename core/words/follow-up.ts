import { coralsIn } from './corals.ts';
import { hear, type Heard, type Said } from './hear.ts';
import { is, type Mention } from './mention.ts';
import { leadOf, roleOf, tailOf } from './roles.ts';
import { tankVolume } from './tank-volume.ts';

/** Words a sentence begins with that goes on from what was said before. */
const GOES_ON =
  /^\W*(?:and|or|but|ok(?:ay)?|then|also|sorry|oops|no|yes|i meant?|make (?:it|that)|(?:what|how) (?:about|if)|instead|same)\b/;
/** Words that begin a new question just as often: only a sentence of a few words goes on with them. */
const MAY_GO_ON =
  /^\W*(?:so|its|it's|it is|that's|thats|in|with|for|over|using|at|to|(?:the|my) (?:tank|system|volume)|tank|volume|it holds|i have)\b/;
/** Longer than this a sentence is a question of its own: taking it for the rest of another would mix two. */
const MOST_LETTERS = 80;
const MOST_LETTERS_OF_FEW_WORDS = 40;
/** "what about 9", "make it 9", "and to 9": a number that is where it should end. */
const WISH = /(?:\b(?:about|if|make (?:it|that)|meant?|to|want|goal)\b)[^.!?]{0,16}$/;

/** Whether a sentence begins as one that goes on from another, or is nothing but a value or a name. */
export function goesOn(text: string): boolean {
  const { text: cleaned, mentions, compounds } = hear(text);
  if (cleaned.length > MOST_LETTERS) return false;
  if (GOES_ON.test(cleaned)) return true;
  if (MAY_GO_ON.test(cleaned) && cleaned.length <= MOST_LETTERS_OF_FEW_WORDS) return true;
  const named = [...compounds, ...coralsIn(cleaned)].map(({ name }) => name);
  const rest = [...mentions.map((one) => one.text), ...named].reduce(
    (left, one) => left.replace(one, ' '),
    cleaned,
  );
  return !/[a-z]{2}/.test(rest.replaceAll(/\b(?:net|total|of|water|tank|system|about|the|us|coral)\b/g, ' '));
}

/**
 * The earlier question with what a later sentence names put in: a volume, a compound, a coral or a value in place of the
 * one of its kind, or added where there was none. "raise alk 7.2 to 8.4 in 75 gal with soda ash", "and with baking
 * soda?" -> "raise alk 7.2 to 8.4 in 75 gal with baking soda". undefined where the later one names nothing to put in.
 */
export function followedUp(before: string, later: string): string | undefined {
  const [was, now] = [hear(before), hear(later)];
  const changes = [...compoundChange(was, now), ...coralChange(was, now), ...numberChanges(was, now)];
  if (changes.length === 0) return undefined;
  return changes
    .sort((a, b) => b.start - a.start)
    .reduce((text, { start, end, put }) => text.slice(0, start) + put + text.slice(end), was.text)
    .trim();
}

/** Letters `start` to `end` of the earlier text become `put`; at its end they are added. */
interface Change {
  readonly start: number;
  readonly end: number;
  readonly put: string;
}

function added(was: Heard, put: string): Change {
  const end = was.text.length;
  return { start: end, end, put: ` ${put}` };
}

function compoundChange(was: Heard, now: Heard): readonly Change[] {
  const known = new Set(was.compounds.map(({ name }) => name));
  const fresh = now.compounds.find(({ name }) => !known.has(name)) ?? now.compounds[0];
  if (fresh === undefined) return [];
  const last = was.compounds.at(-1);
  return [last === undefined ? added(was, `with ${fresh.name}`) : { ...last, put: fresh.name }];
}

function coralChange(was: Heard, now: Heard): readonly Change[] {
  const known = new Set(coralsIn(was.text).map(({ name }) => name));
  const fresh = coralsIn(now.text).find(({ name }) => !known.has(name));
  const last = coralsIn(was.text).at(-1);
  if (fresh === undefined || last === undefined) return [];
  const at = was.text.lastIndexOf(last.name);
  return at < 0 ? [] : [{ start: at, end: at + last.name.length, put: fresh.name }];
}

function numberChanges(was: Heard, now: Heard): readonly Change[] {
  const volume = tankVolume(now)?.mention ?? now.mentions.find((one) => is(one, 'volume'));
  const taken = new Set<Mention>();
  return now.mentions.flatMap((mention, index): readonly Change[] => {
    const old =
      mention === volume
        ? tankVolume(was)?.mention
        : sameOf(was, now, mention, index, (one) => taken.has(one));
    if (old === undefined)
      return [added(was, mention === volume ? `in ${mention.text}` : phrase(now, index))];
    taken.add(old);
    return [{ start: old.start, end: old.end, put: withUnit(mention, old) }];
  });
}

/** The earlier number a later one stands for: of the same parameter and part, else the goal, else of the same kind. */
function sameOf(
  was: Heard,
  now: Heard,
  mention: Mention,
  index: number,
  isTaken: (one: Mention) => boolean,
): Mention | undefined {
  const lead = leadOf(now.text, now.mentions, index);
  const wished = WISH.test(lead) || roleOf(lead, tailOf(now.text, now.mentions, index)) === 'goal';
  const said = now.said.find((one) => one.mention === mention);
  const open = was.said.filter((one) => !isTaken(one.mention));
  const role = wished ? 'goal' : (said?.role ?? 'plain');
  const sameKind =
    said !== undefined || wished || is(mention, 'bare')
      ? undefined
      : was.mentions.findLast((one) => !isTaken(one) && sharesKind(mention, one));
  const sameParameter = (one: Said): boolean => said === undefined || one.parameter === said.parameter;
  const samePart = open.find((one) => one.role === role && sameParameter(one) && fits(mention, one.mention));
  return sameKind ?? samePart?.mention;
}

function fits(mention: Mention, old: Mention): boolean {
  return is(mention, 'bare') || is(old, 'bare') || sharesKind(mention, old);
}

function sharesKind(a: Mention, b: Mention): boolean {
  return a.kinds.some((kind) => b.kinds.includes(kind));
}

/** A bare number takes the unit of the one it stands for. */
function withUnit(mention: Mention, old: Mention): string {
  if (!is(mention, 'bare') || is(old, 'bare')) return mention.text;
  return `${mention.text} ${old.text.replace(/^[\d.,\s]+/, '')}`.trim();
}

/** A number with the words before it, so that its part is kept. */
function phrase(now: Heard, index: number): string {
  const mention = now.mentions[index];
  const lead = leadOf(now.text, now.mentions, index).replace(GOES_ON, '').replace(MAY_GO_ON, '').trim();
  return `${lead} ${mention?.text ?? ''}`.trim();
}
