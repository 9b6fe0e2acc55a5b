import type { UrgentId } from '../../core/care/urgent/cards.ts';
import { raisedBy } from '../../core/dosing/raised-by.ts';
import { met } from '../../core/language/met.ts';
import type { Level, Slots } from '../../core/language/slots.ts';
import type { Reading } from '../../core/language/reading.ts';
import type { Scanned } from '../../core/language/tokens.ts';
import type { ParameterId } from '../../core/water/parameter.ts';
import { dosedLevels, dosedOf, type Overdosable, type UrgentInput } from './input.ts';

/** What a message says of an emergency, as options of the command. */
export function urgentSaid(
  what: UrgentId,
  slots: Slots,
  reading: Told,
): UrgentInput & { of: Overdosable | undefined } {
  const of = what === 'overdose' ? (overdosed(reading) ?? bySlots(slots)) : undefined;
  const measured = of === undefined ? (what === 'ammonia' ? what : undefined) : dosedOf(of);
  const aimed = what === 'salinity crash' ? 'salinity' : of === undefined ? undefined : measured;
  const salinity = stateOf(slots, 'salinity');
  return {
    of,
    now: measured === undefined ? undefined : stateOf(slots, measured)?.text,
    goal: aimed === undefined ? undefined : wishOf(slots, aimed)?.text,
    volume: slots.volume,
    temperature: stateOf(slots, 'temperature')?.text,
    salinity: salinity === undefined ? undefined : onScale(salinity),
  };
}

type Told = Pick<Reading, 'scanned' | 'cards'>;

/** What was dosed too much: limewater that nobody names is known by its milk and its high pH, else what was named. */
export function overdosed({ scanned, cards }: Told): Overdosable | undefined {
  const named = overdosedNamed(scanned);
  const [likeliest] = cards('urgent-water');
  return named ?? (likeliest?.name === 'limewater ran away' ? 'limewater' : undefined);
}

/** By what was named; alkalinity where only a doser was, and undefined for anything else. */
function overdosedNamed(scanned: Scanned): Overdosable | undefined {
  const named = (id: ParameterId): boolean =>
    scanned.names.some((name) => name.class === 'parameter' && name.id === id);
  if (met(scanned, 'substances.lime')) return 'limewater';
  if (named('alkalinity') || met(scanned, 'substances.alkPowder', 'sums.alkalinity')) return 'alkalinity';
  if (named('calcium') || met(scanned, 'substances.calciumSalt', 'sums.calcium')) return 'calcium';
  if (named('magnesium') || met(scanned, 'substances.magnesiumSalt', 'sums.magnesium')) return 'magnesium';
  const salts = new Set(scanned.names.flatMap((name) => (name.class === 'salt' ? raisedBy(name.id) : [])));
  const raised = dosedLevels.find((id) => salts.has(id));
  if (raised !== undefined) return raised;
  if (named('ph')) return 'limewater';
  const isOther = scanned.names.some((name) => name.class === 'parameter') || met(scanned, ...OTHERS);
  return !isOther && met(scanned, 'substances.twoPart', 'gear.doser') ? 'alkalinity' : undefined;
}

/** What was told to have gone in, where the message itself names nothing: by its salt, else by the parameter. */
function bySlots({ salt, of }: Slots): Overdosable | undefined {
  const raised = new Set(salt === undefined ? [of] : raisedBy(salt));
  return dosedLevels.find((id) => raised.has(id));
}

/** Additions that are none of these, whatever doses them. */
const OTHERS = [
  'substances.iodine',
  'substances.traces',
  'substances.aminoAcids',
  'substances.carbonSource',
  'substances.bacteriaBottle',
  'substances.nitrateAdd',
  'substances.phosphateAdd',
  'substances.coralFood',
  'substances.food',
] as const;

/** The last state said of a parameter: now, else as it was. */
export function stateOf({ levels = [] }: Slots, id: ParameterId): Level | undefined {
  const mine = levels.filter(({ of }) => of === id);
  return mine.findLast(({ part }) => part === 'now') ?? mine.findLast(({ part }) => part === 'was');
}

function wishOf({ levels = [] }: Slots, id: ParameterId): Level | undefined {
  return levels.findLast(({ of, part }) => of === id && (part === 'wanted' || part === 'target'));
}

/** A bare number that can only be ppt; a scale is not asked for while a tank is in danger. */
const PPT = { least: 10, most: 42 } as const;

function onScale({ text, value }: Level): string {
  const isBare = Number(text) === value;
  return isBare && value >= PPT.least && value <= PPT.most ? `${text} ppt` : text;
}
