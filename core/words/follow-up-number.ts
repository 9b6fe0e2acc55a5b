import { parameter } from '../water/parameter.ts';
import { added, type Change } from './change.ts';
import { LEAD } from './goes-on.ts';
import type { Heard, Said } from './hear.ts';
import { is, type Mention } from './mention.ts';
import { leadOf, roleOf, tailOf, type Role } from './roles.ts';
import { isTankSize, tankVolume } from './tank-volume.ts';
import { limitsOf } from '../water/limits.ts';

/** "what about 9", "make it 9": a number for the one that is wished, or for the only one there is. */
const ABOUT = /\b(?:about|if|make (?:it|that)|meant?)\b[^.!?]{0,16}$/;
/** "what if it starts at 40", "6.8 now": a number that is where it stands. */
const NOW_LEAD = /\b(?:starts?|starting|now|was|from|reads?)(?: (?:at|about|like|is))?\s*$/;
const NOW_TAIL = /^\s*(?:now|today|to start)\b/;
/** "7 not 6.5": the second is the number of before. */
const NOT = /\b(?:not|instead of|rather than)\s*$/;
/** Words by which a volume is surely that of the tank. */
const OF_TANK = /\b(?:tank|system|volume|holds?|net|it's|its|it is)\b/;

/** A number of the later sentence and what is said around it. */
interface Later {
  readonly was: Heard;
  readonly now: Heard;
  readonly mention: Mention;
  readonly lead: string;
  readonly tail: string;
  readonly role: Role;
  readonly said: Said | undefined;
}

/** A change for every number of the later sentence; undefined where one of them has no place. */
export function numberChanges(was: Heard, now: Heard): readonly Change[] | undefined {
  const volume = tankVolume(now)?.mention ?? now.mentions.find((one) => is(one, 'volume'));
  const taken = new Set<Mention>();
  const changes: Change[] = [];
  for (const [index, mention] of now.mentions.entries()) {
    if (index > 0 && NOT.test(leadOf(now.text, now.mentions, index))) continue;
    const later = laterOf(was, now, mention, index);
    const next = now.mentions[index + 1];
    const isPut = next !== undefined && NOT.test(leadOf(now.text, now.mentions, index + 1));
    const old = isPut
      ? was.mentions.find(({ value }) => value === next.value)
      : mention === volume
        ? (oldMeasure(later) ?? oldVolume(later))
        : oldNumber(later, taken);
    if (old !== undefined) taken.add(old);
    const change = old === undefined ? addition(later, isPut, mention === volume) : replaced(mention, old);
    if (change === undefined) return undefined;
    changes.push(change);
  }
  return changes;
}

function laterOf(was: Heard, now: Heard, mention: Mention, index: number): Later {
  const [lead, tail] = [leadOf(now.text, now.mentions, index), tailOf(now.text, now.mentions, index)];
  const said = now.said.find((one) => one.mention === mention);
  return { was, now, mention, lead, tail, said, role: roleOf(lead, tail) };
}

/** A bare number takes the unit of the one it stands for. */
function replaced(mention: Mention, old: Mention): Change {
  const unit = !is(mention, 'bare') || is(old, 'bare') ? '' : old.text.replace(/^[\d.,\s]+/, '');
  return { start: old.start, end: old.end, put: `${mention.text} ${unit}`.trim() };
}

/** "and 30 g" after "20 g in 75 gal", "2 tsp" after "1.5 tsp": what is weighed or measured out, and not the tank. */
function oldMeasure({ was, mention, lead }: Later): Mention | undefined {
  const tank = tankVolume(was)?.mention;
  const isMass = is(mention, 'mass') && !/\b(?:in|for|tank)\s*$/.test(lead);
  return was.mentions.find(
    (one) =>
      one !== tank &&
      (isMass ? is(one, 'mass') : !isTankSize(mention) && is(one, 'volume') && !isTankSize(one)),
  );
}

function oldVolume(later: Later): Mention | undefined {
  return isTankSize(later.mention) && mayBeTank(later) ? tankVolume(later.was)?.mention : undefined;
}

/** "with 100 g" is a mass, and where two volumes were said "20 gal" may stand for either. */
function mayBeTank({ was, now, mention, lead }: Later): boolean {
  if (is(mention, 'mass') && /\b(?:with|using|use|of|add|put)\s*$/.test(lead)) return false;
  return OF_TANK.test(now.text) || was.mentions.filter(isTankSize).length < 2;
}

/** A number that stands for none of before, with the words that say its part; undefined where nothing does. */
function addition(later: Later, isPut: boolean, isVolume: boolean): Change | undefined {
  const { was, mention, lead, role, said } = later;
  if (isPut) return undefined;
  if (isVolume)
    return isTankSize(mention) && tankVolume(was) === undefined && mayBeTank(later)
      ? added(was, `in ${mention.text}`)
      : undefined;
  if (was.said.some((one) => one.parameter === said?.parameter && partOf(one.role) === partOf(said.role)))
    return undefined;
  if (said !== undefined || !is(mention, 'bare'))
    return added(was, `${lead.replace(LEAD, '').trim()} ${mention.text}`.trim());
  const isAbout = was.said.length + was.compounds.length > 0;
  if (role === 'before' || isAsked(later)) return isAbout ? added(was, `from ${mention.text}`) : undefined;
  return role === 'goal' && isAbout ? added(was, `want ${mention.text}`) : undefined;
}

/** "raise alk 8" and then "7": what it reads, since only where it should be was said. */
function isAsked({ was, mention, role }: Later): boolean {
  const isLevel = /\b(?:raise|bump|increase|boost|lift)\b/.test(was.text) && was.said.length === 1;
  return isLevel && role === 'plain' && is(mention, 'bare') && was.said[0]?.role !== 'before';
}

/** The earlier number a later one stands for: of the same parameter and part, else of the same kind. */
function oldNumber(later: Later, taken: ReadonlySet<Mention>): Mention | undefined {
  const { was, mention, said, lead, tail, role } = later;
  if (isAsked(later)) return undefined;
  const isNow = NOW_TAIL.test(tail) || NOW_LEAD.test(lead);
  const isAbout = !isNow && role !== 'goal' && ABOUT.test(lead);
  const candidates = was.said.filter(
    (one) =>
      !taken.has(one.mention) &&
      (said === undefined || one.parameter === said.parameter) &&
      fits(mention, one) &&
      believable(mention, one),
  );
  const ofPart = (part: Role): Mention | undefined =>
    candidates.find((one) => partOf(one.role) === part)?.mention;
  const sameKind =
    said === undefined && !isNow && role === 'plain' && !is(mention, 'bare')
      ? was.mentions.findLast((one) => !taken.has(one) && sharesKind(mention, one))
      : undefined;
  if (isAbout && candidates.length > 0)
    return ofPart('goal') ?? (candidates.length === 1 ? candidates[0]?.mention : undefined);
  if (sameKind !== undefined || isAbout) return sameKind;
  const [only, more] = candidates.filter((one) => partOf(one.role) === partOf(isNow ? 'plain' : role));
  return more === undefined ? only?.mention : undefined;
}

/** "from 6.5" is a reading as much as "6.5". */
function partOf(role: Role): Role {
  return role === 'before' ? 'plain' : role;
}

/** A bare number for a bare one: both where that parameter is read, so that "its 60" is no alkalinity. */
function believable(mention: Mention, { parameter: id, mention: old }: Said): boolean {
  if (!is(mention, 'bare')) return true;
  const [low, high] = parameter(id).kind === 'salinity' ? salinityLike(old) : limitsOf(id).believable;
  const within = ({ value }: Mention): boolean => value >= low && value <= high;
  return within(mention) || !within(old);
}

/** Gravities and ppt of a tank, whichever the earlier number was. */
function salinityLike({ value }: Mention): readonly [number, number] {
  return value < 2 ? [1, 1.045] : [20, 45];
}

function fits(mention: Mention, { parameter: id, mention: old }: Said): boolean {
  if (is(mention, 'bare')) return true;
  if (!is(old, 'bare')) return sharesKind(mention, old);
  return is(mention, parameter(id).kind);
}

function sharesKind(a: Mention, b: Mention): boolean {
  return a.kinds.some((kind) => b.kinds.includes(kind));
}
