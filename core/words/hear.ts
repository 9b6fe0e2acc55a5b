import { MAX_MESSAGE_LENGTH } from '../message-length.ts';
import { clean } from '../quantity/clean.ts';
import { oneMark } from '../quantity/marks.ts';
import { parameter, type ParameterId } from '../water/parameter.ts';
import { is, mentions, type Mention } from './mention.ts';
import { compoundsIn, parametersIn, raisedBy, type Named } from './names.ts';
import { oneForm } from './one-form.ts';
import { leadOf, rateDays, roleOf, tailOf, type Role } from './roles.ts';
import { respelt } from './spelling.ts';
import { limitsOf } from '../water/limits.ts';

/** A number that was said of one parameter. */
export interface Said {
  readonly parameter: ParameterId;
  readonly mention: Mention;
  readonly role: Role;
  /** Days behind "a week", "/day", ...; undefined when the number is no rate. */
  readonly everyDays: number | undefined;
}

/** A member's sentence taken apart: every number with what it belongs to, and the names that occur. */
export interface Heard {
  /** As it was written. */
  readonly given: string;
  readonly text: string;
  readonly mentions: readonly Mention[];
  readonly said: readonly Said[];
  /** Parameters named, in order, each once. */
  readonly parameters: readonly ParameterId[];
  readonly compounds: readonly Named<string>[];
}

/** The numbers said of one parameter, in order. */
export function saidOf({ said }: Heard, id: ParameterId): readonly Said[] {
  return said.filter((one) => one.parameter === id);
}

/** Takes a text apart. Pure and linear in the text's length. */
export function hear(text: string): Heard {
  const [marked = ''] = oneMark([clean(text).slice(0, MAX_MESSAGE_LENGTH)]);
  const cleaned = oneForm(respelt(marked));
  const found = mentions(cleaned);
  const named = compoundsIn(cleaned);
  const params = [...parametersIn(cleaned, [...named, ...found]), ...found.flatMap(byUnit)].sort(
    (a, b) => a.start - b.start,
  );
  return {
    given: text,
    text: cleaned,
    mentions: found,
    said: [
      ...found.flatMap((mention, index) => ownedBy(cleaned, found, index, mention, params)),
      ...impliedBy(named, cleaned, found, params),
      ...risesOf(named, cleaned, found, params),
    ],
    parameters: [...new Set(params.map(({ name }) => name))],
    compounds: named,
  };
}

function ownedBy(
  text: string,
  all: readonly Mention[],
  index: number,
  mention: Mention,
  params: readonly Named<ParameterId>[],
): Said[] {
  const lead = leadOf(text, all, index);
  const about = ownerOf(text, mention, lead, params);
  if (about === undefined) return [];
  const after = text.slice(mention.end, mention.end + 40);
  const everyDays = rateDays(after);
  const role = cameTo(text, lead, all[index - 1])
    ? 'plain'
    : roleOf(lead, everyDays === undefined ? tailOf(text, all, index) : after);
  return [{ parameter: about, mention, role, everyDays }];
}

/** "fell from 9 to 6": what it came to, and no goal. */
function cameTo(text: string, lead: string, before: Mention | undefined): boolean {
  if (before === undefined || !/^[^.!?,]{0,12}?(?:\bto|->|→)\s*(?:about |around |like )?\s*$/.test(lead))
    return false;
  return /\b(?:dropp?ed|fell|crashed|sank|slid|slipped|went|rose|jumped|climbed|crept|spiked|drifted|swung)\b[^.!?]{0,30}$/.test(
    text.slice(Math.max(0, before.start - 48), before.start),
  );
}

/** "100 ppm nitrate", "8 dkh": a unit that names the parameter. */
function byUnit({ kinds, start, end }: Mention): readonly Named<ParameterId>[] {
  const [only, more] = kinds;
  const isName = only === 'nitrate' || only === 'phosphate' || only === 'alkalinity';
  return isName && more === undefined ? [{ name: only, start, end }] : [];
}

/**
 * "how much soda ash from 7 to 8", "7.5 up to 8.5 dkh": with a goal and no parameter named before them, bare numbers that
 * can be read of it belong to the one the salt is dosed for or the unit says.
 */
function impliedBy(
  named: readonly Named<string>[],
  text: string,
  all: readonly Mention[],
  params: readonly Named<ParameterId>[],
): readonly Said[] {
  const ids = new Set(
    params.length > 0 ? params.map(({ name }) => name) : named.flatMap(({ name }) => raisedBy(name)),
  );
  const [id] = ids;
  const from = params[0]?.start ?? text.length;
  if (id === undefined || ids.size > 1) return [];
  const [low, high] = limitsOf(id).believable;
  const roles = all.map((_, index) => roleOf(leadOf(text, all, index), tailOf(text, all, index)));
  const isAsked = all.some(
    (mention, index) => roles[index] === 'goal' && (is(mention, 'bare') || is(mention, parameter(id).kind)),
  );
  return all.flatMap((mention, index): readonly Said[] => {
    const isOf = is(mention, 'bare') && mention.value >= low && mention.value <= high && mention.start < from;
    return isAsked && isOf
      ? [{ parameter: id, mention, role: roles[index] ?? 'plain', everyDays: undefined }]
      : [];
  });
}

/** "how many grams calcium chloride for 20 ppm": with no parameter named, a rise of what the salt is dosed for. */
function risesOf(
  named: readonly Named<string>[],
  text: string,
  all: readonly Mention[],
  params: readonly Named<ParameterId>[],
): readonly Said[] {
  const [id, other] = [...new Set(named.flatMap(({ name }) => raisedBy(name)))];
  if (id === undefined || other !== undefined || params.length > 0) return [];
  const rises = all.filter(
    (mention) =>
      is(mention, 'concentration') &&
      /\b(?:for|by|raise(?: it)?|bump(?: it)?|of)\s*$/.test(text.slice(0, mention.start)),
  );
  const [mention, more] = rises;
  if (mention === undefined || more !== undefined || parameter(id).kind !== 'concentration') return [];
  return [{ parameter: id, mention, role: 'step', everyDays: undefined }];
}

/** The parameter a number belongs to: by its unit, by a name just behind it, else by the last name before it. */
function ownerOf(
  text: string,
  mention: Mention,
  lead: string,
  params: readonly Named<ParameterId>[],
): ParameterId | undefined {
  if (is(mention, 'bare') && /\b(?:day|week|month|hour|hr)\s*#?\s*$/.test(lead)) return undefined;
  if (is(mention, 'salinity') || /\b(?:salinity|sg|gravity)\s*(?:is|at|of|=|:)?\s*$/.test(lead))
    return 'salinity';
  if (mention.kinds.length === 1 && is(mention, 'temperature')) return 'temperature';
  const [unit] = byUnit(mention);
  if (unit !== undefined) return unit.name;
  const behind = params.find(
    (p) => p.start >= mention.end && /^\s*(?:(?:of|more|extra)\s+)?$/.test(text.slice(mention.end, p.start)),
  );
  const valued = behind !== undefined && /^\s*(?:is|at|=|:)?\s*[.\d]/.test(text.slice(behind.end));
  if (behind !== undefined && !valued && fits(mention, behind.name)) return behind.name;
  const before = params.findLast((p) => p.end <= mention.start && fits(mention, p.name));
  const latest = params.findLast((p) => p.end <= mention.start);
  if (before !== undefined && (before === latest || !is(mention, 'bare'))) return before.name;
  return is(mention, 'bare') && mayBeSalinity(text, mention) ? 'salinity' : undefined;
}

/** "salinity 38 ppt want 35": a bare number of that size after a salinity. */
function mayBeSalinity(text: string, { value, start }: Mention): boolean {
  return (
    value >= 28 &&
    value <= 42 &&
    /(?:\b(?:salinity|sal|refract\w*|hydromet\w*)|(?:\b|\d)(?:ppt|psu))\b/.test(text.slice(0, start))
  );
}

/** Whether the mention's unit can belong to the parameter; a bare number always can, and ppm of ammonia is a concentration. */
function fits(mention: Mention, id: ParameterId): boolean {
  const { kind } = parameter(id);
  const isMassPerLitre = (kind === 'ammonia' || kind === 'nitrite') && is(mention, 'concentration');
  return is(mention, 'bare') || is(mention, kind) || isMassPerLitre;
}
