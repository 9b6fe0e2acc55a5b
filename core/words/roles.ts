import type { Mention } from './mention.ts';

/** What part a number plays in a sentence. */
export type Role = 'goal' | 'before' | 'fresh' | 'rise' | 'use' | 'step' | 'plain';

const GOAL =
  /(?:\b(?:to|want(?:ed|s)?|goal|target|aim(?:ing)?|hit(?:ting)?|till?|until|reach|or under|or below|back|(?:i'?d|would) like)\b|->|=>|→)(?:\s+(?:it|its|is|be|to|for|at|or|under|about|around|get|back|like|the|a|raise))*\s*[:=~]*\s*$/;
/** "want kh 9", "goal for alk is 8.5": what is wanted is named between the wish and its number. */
const WISH_OF =
  /\b(?:want(?:ed|s)?|needs?|goal|target|aim(?:ing)?|till?|until|reach)(?:\s+(?:it|my|our|the|a|an|for|of|at|is))*\s+(?:alk|alkalinity|d?kh|ca|calc|calcium|mg|mag|magnesium|no3|nitrates?|po4|phosphates?|salinity|sg)(?:\s+(?:of|at|to|be|is|around|about))*\s*[:=~]*\s*$/;
const NEED = /\bneed(?:ed|s)?(?:\s+(?:it|to|be|get|at|about|around|up))*\s*$/;
/** "8.5 is my goal". */
const GOAL_TAIL = /^\s*(?:is |as )?(?:my|the|our|a) (?:goal|target|aim)\b/;
const OR_LESS = /^\s*or (?:under|below|less|lower)\b/;
/** "dropped to 6": where it came to, not where it should be. */
const CAME_TO =
  /\b(?:dropped|fell|crashed|sank|slid|slipped|went|rose|jumped|climbed|crept|spiked)(?: (?:back|down|up))? to(?: (?:about|around|like))?\s*$/;
/** "8 dkh salt", "450 in the new water". */
const FRESH_TAIL =
  /^\s*(?:(?:in|from|for) (?:the |my )?)?(?:new (?:salt ?)?(?:water|mix)|(?:new )?salt(?: ?mix)?)(?:\s*[,.?]|$)/;
const BEFORE = /\b(?:used to be|was|were|before|usually|normally|from)\s*(?:at|about|around)?\s*$/;
const FRESH =
  /\b(?:salt|mix|new water|(?:wc|change) water|fresh water|salt ?water|comes out|mixes)\b[^.!?]{0,24}$/;
const RISE = /\b(?:climbs?|rises?|goes up|creeps? up|increases?|up)\s*(?:by|about|around)?\s*$/;
const USE =
  /\b(?:eats?|uses?|using|consum\w*|drop(?:s|ping)?|fall(?:s|ing)?|goes down|going down|demand|takes|los(?:es?|ing))\s*(?:(?:by|about|around|of|up|is|roughly|~)\s*)*(?:(?:alk|alkalinity|calcium|magnesium)\s*)?$/;
const STEP = /\b(?:by|add(?:ing)?(?: (?:another|an extra))?)\s*(?:about|around|some)?\s*$/;
/** "a 1.5 dkh bump", "2 dkh higher": how far, not where. */
const STEP_TAIL =
  /^\s*(?:of )?(?:(?:a|alk|alkalinity|ca|calcium|mg|magnesium) )?(?:bump|boost|rise|raise|increase|jump|higher|more(?! or less))\b/;
const RATE =
  /^\s*(?:(?:of )?(?:alk|alkalinity|calcium|magnesium|nitrate)\s*)?(?:\/|per|a|each|every|p\/)\s*(?<count>\d+(?:\.\d+)? )?(?<unit>day|d\b|week|wk|month)/;

const DAYS: Readonly<Record<string, number>> = { day: 1, d: 1, week: 7, wk: 7, month: 30.4375 };

/** The role of a mention, from the words just before it (`lead`) and after it (`tail`). */
export function roleOf(lead: string, tail: string): Role {
  const rate = RATE.test(tail);
  if (rate && RISE.test(lead)) return 'rise';
  if (rate && USE.test(lead)) return 'use';
  if (CAME_TO.test(lead)) return 'plain';
  if (FRESH.test(lead)) return 'fresh';
  if (STEP.test(lead) || STEP_TAIL.test(tail)) return 'step';
  if (BEFORE.test(lead)) return 'before';
  const isWish =
    [GOAL, WISH_OF, NEED].some((wish) => wish.test(lead)) ||
    [OR_LESS, GOAL_TAIL].some((wish) => wish.test(tail));
  if (isWish) return 'goal';
  return FRESH_TAIL.test(tail) ? 'fresh' : 'plain';
}

/** Days in "a week", "/day", "per month" right behind a mention, or undefined. */
export function rateDays(tail: string): number | undefined {
  const { unit, count } = RATE.exec(tail)?.groups ?? {};
  const days = DAYS[unit ?? ''];
  return days === undefined ? undefined : days * Number(count ?? 1);
}

/** The words before a mention, from the one before it and at most 40 characters back. */
export function leadOf(text: string, all: readonly Mention[], index: number): string {
  const mention = all[index];
  if (mention === undefined) return '';
  const from = Math.max(all[index - 1]?.end ?? 0, mention.start - 40);
  return text.slice(from, mention.start);
}

/** The words after a mention, at most 40 characters and up to the next one. */
export function tailOf(text: string, all: readonly Mention[], index: number): string {
  const mention = all[index];
  if (mention === undefined) return '';
  return text.slice(mention.end, Math.min(all[index + 1]?.start ?? text.length, mention.end + 40));
}
