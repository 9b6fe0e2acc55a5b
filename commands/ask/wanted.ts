import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import type { Heard, Said } from '../../core/words/hear.ts';
import { is } from '../../core/words/mention.ts';
import { says } from './intent.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { loweredIn } from '../../core/words/lowering.ts';

/** Parameters a dose can raise. */
const DOSED: readonly ParameterId[] = [
  'alkalinity',
  'calcium',
  'magnesium',
  'potassium',
  'strontium',
  'bromide',
  'iodine',
  'nitrate',
  'phosphate',
];

const RAISES = [
  'rais(?:e|es|ing)',
  'bump',
  'boost',
  'up',
  'increase',
  'rise',
  'jump',
  'higher',
  'add',
  'go up',
  'more',
];
/** A fall alone is told, not asked to be undone. */
const WISHES = [
  'dos(?:e|es|ing)',
  'how (?:much|many)',
  'should',
  'bring',
  'back',
  'fix',
  'grams',
  'want',
  'need',
  'get',
];
const RISE_LEAD =
  /\b(?:raise|bump|increase|boost|lift|add)(?: up)?(?: (?:my|the|our))?(?: [a-z0-9]+)?(?: up)?(?: (?:about|around))?\s*$/;
const LEVEL_LEAD = /\b(?:raise|bump|increase|boost|lift)(?: up)?(?: (?:my|the|our))? [a-z0-9]+(?: up)?\s*$/;
const RISE_FOR = /\b(?:for|gives?|gain|get|adds?)(?: (?:a|an|me|about|around|another))*\s*$/;

/** A parameter to be raised. */
export interface Wanted {
  readonly of: ParameterId;
  /** Undefined where only a rise was said: goal is then "+2 dKH". */
  readonly now: string | undefined;
  readonly goal: string;
}

/** A bare number in the unit answers are given in. */
function withUnit(text: string, id: ParameterId): string {
  return /^[\d.,]+$/.test(text) ? `${text} ${parameter(id).unit}` : text;
}

/** Every parameter said with a lower and a higher number, the higher one to be reached, or with a rise; never one wished lower. */
export function wanted(heard: Heard): readonly Wanted[] {
  const lowered = loweredIn(heard);
  return DOSED.filter((id) => !lowered.includes(id)).flatMap((id) => wantedOf(heard, id) ?? []);
}

function wantedOf(heard: Heard, id: ParameterId): Wanted | undefined {
  const said = heard.said.filter((each) => each.parameter === id);
  const step = said.find(({ role }) => role === 'step');
  const rise =
    step !== undefined && (says(heard, ...RAISES) || asksOneAmount(heard, said))
      ? step
      : onlyRise(heard, said, id);
  if (rise !== undefined) {
    const now = said.find(({ role, mention }) => role === 'plain' && mention !== rise.mention)?.mention.text;
    return { of: id, now, goal: `+${withUnit(rise.mention.text, id)}` };
  }
  const level = levelOnly(heard, said);
  if (level !== undefined) {
    const now = said.find(({ role }) => role === 'before')?.mention.text;
    return { of: id, now, goal: level.mention.text };
  }
  const pair = fell(heard, said) ?? towards(said);
  if (pair !== undefined && pair.goal.mention.value > pair.now.mention.value) {
    return { of: id, now: pair.now.mention.text, goal: pair.goal.mention.text };
  }
  return undefined;
}

/** "how many grams calcium chloride for 20 ppm": one number of it, and an amount asked. */
function asksOneAmount(heard: Heard, said: readonly Said[]): boolean {
  return said.length === 1 && heard.compounds.length > 0 && says(heard, 'how (?:much|many)', 'dose', 'grams');
}

/**
 * "raise alk 1.5 dkh", "how much soda ash for 2 dkh": the one number said of it, too small to be a level anyone keeps
 * (below 4 dKH, or below where a reading can be believed).
 */
function onlyRise(heard: Heard, said: readonly Said[], id: ParameterId): Said | undefined {
  const [only, more] = said;
  if (only === undefined || more !== undefined) return undefined;
  const lead = heard.text.slice(Math.max(0, only.mention.start - 40), only.mention.start);
  const asked =
    (only.role === 'plain' && RISE_LEAD.test(lead)) ||
    (says(heard, 'how (?:much|many)', 'dose', 'grams') && RISE_FOR.test(lead));
  const mostOfRise = id === 'alkalinity' ? 4 : limitsOf(id).believable[0];
  const isInOwnUnit = id !== 'alkalinity' || !/meq|mmol|ppm|mg/.test(only.mention.text);
  return asked && isInOwnUnit && only.mention.value < mostOfRise ? only : undefined;
}

/** "raise alk 8 in 75 gal": where it should be; what it reads is asked, or is said as "from 7". */
function levelOnly(heard: Heard, said: readonly Said[]): Said | undefined {
  const [only, more] = said.filter(({ role }) => role !== 'before');
  if (only?.role !== 'plain' || more !== undefined || said.length > 2) return undefined;
  const isNutrient = only.parameter === 'nitrate' || only.parameter === 'phosphate';
  if (is(only.mention, 'concentration') && !isNutrient) return undefined;
  const lead = heard.text.slice(Math.max(0, only.mention.start - 40), only.mention.start);
  return LEVEL_LEAD.test(lead) ? only : undefined;
}

/** "fell 9.3 -> 7.5": the second number is the reading, the first where it should be. */
function fell(heard: Heard, said: readonly Said[]): { now: Said; goal: Said } | undefined {
  const [first, second] = said;
  if (first === undefined || second === undefined || second.mention.value >= first.mention.value)
    return undefined;
  const lead = heard.text.slice(Math.max(0, first.mention.start - 24), first.mention.start);
  if (heard.compounds.length === 0 && !says(heard, ...RAISES, ...WISHES)) return undefined;
  const sank = /\b(?:fell|dropped|crashed|sank|slid|went down|went from|is down)\b/.test(lead);
  return sank ? { now: second, goal: first } : undefined;
}

function towards(said: readonly Said[]): { now: Said; goal: Said } | undefined {
  const goal = said.findLast(({ role }) => role === 'goal');
  const now = said.find(({ role }) => role === 'plain' || role === 'before');
  return goal === undefined || now === undefined ? undefined : { now, goal };
}
