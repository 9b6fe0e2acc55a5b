import type { CoralEntry, FlowBand } from './entry.ts';
import type { CoralGroup } from './kind.ts';
import { pairRoom } from './pair-room.ts';
import { cm } from './say.ts';
import type { Box, Placed } from './scene.ts';
import { mind, no, placeSays, type Place, type Said } from './suits-there.ts';

/** How long someone has kept a reef. */
export const levels = ['first year', 'some years', 'many years'] as const;
export type Level = (typeof levels)[number];

/** What is asked for; all that is left out is not judged. */
export interface Wanted {
  readonly level?: Level | undefined;
  readonly flow?: FlowBand | undefined;
  readonly ground?: 'rock' | 'sand' | undefined;
  readonly group?: CoralGroup | undefined;
  /** The inside of the glass. */
  readonly box?: Box | undefined;
  /** Whether that is only a guess from the water. */
  readonly boxGuessed?: boolean | undefined;
  /** Corals of the tank, where no spot among them is tried. */
  readonly neighbours?: readonly Pick<Placed, 'entry' | 'label'>[] | undefined;
  readonly place?: Place | undefined;
}

/** What speaks against a coral there, and what is to be watched. */
export interface Suits {
  readonly entry: CoralEntry;
  readonly against: readonly string[];
  readonly watch: readonly string[];
}

/** One coral against what is asked for. It fits where nothing is against it. */
export function suits(entry: CoralEntry, wanted: Wanted): Suits {
  return sorted(entry, [...kindSays(entry, wanted), ...neighboursSay(entry, wanted)]);
}

/** The same; undefined, sooner, where it does not fit. */
export function suitsOrNot(entry: CoralEntry, wanted: Wanted): Suits | undefined {
  const kind = kindSays(entry, wanted);
  if (kind.some(({ against }) => against)) return undefined;
  const whole = sorted(entry, [...kind, ...neighboursSay(entry, wanted)]);
  return whole.against.length === 0 ? whole : undefined;
}

/** What the kind itself says, whoever its neighbours are. */
function kindSays(entry: CoralEntry, wanted: Wanted): readonly Said[] {
  return [
    ...experience(entry, wanted),
    ...flow(entry, wanted),
    ...ground(entry, wanted),
    ...size(entry, wanted),
    ...spreading(entry),
  ];
}

function neighboursSay(entry: CoralEntry, wanted: Wanted): readonly Said[] {
  const { place } = wanted;
  if (place === undefined) return beside(entry, wanted);
  const said = placeSays(entry, place);
  return place.scene.corals.length > 0 ? said : [...said, ...beside(entry, wanted)];
}

function sorted(entry: CoralEntry, found: readonly Said[]): Suits {
  const texts = (wanted: boolean): readonly string[] =>
    found.flatMap(({ against, text }) => (against === wanted ? [text] : []));
  return { entry, against: texts(true), watch: texts(false) };
}

/**
 * Project rule: the first year easy ones only, no anemones, none with a severe sting, a foot that walks or a need to be
 * fed; some years all but the demanding. Hardiness, that anemones wait and that small-polyp corals want steady alkalinity
 * are common practice.
 */
function experience(entry: CoralEntry, { level }: Wanted): readonly Said[] {
  if (level === undefined || level === 'many years') return [];
  const { hardiness, sting, moves, photosynthetic, group } = entry;
  if (hardiness.value === 'demanding') {
    return [no('demanding: many are lost even by keepers of many years')];
  }
  if (level !== 'first year') return [];
  return [
    ...(hardiness.value === 'easy'
      ? []
      : [no(`${hardiness.value} to keep: wait until the tank has run steadily`)]),
    ...(sting.potency === 'severe' ? [no('a severe sting')] : []),
    ...(group === 'anemone'
      ? [no('anemones want a tank that has run steadily for half a year or more')]
      : []),
    ...(moves.value === 'walks' ? [no('it walks, into others and into pumps')] : []),
    ...(photosynthetic ? [] : [no('it lives by being fed, which loads a young tank')]),
    ...(group === 'small-polyp'
      ? [mind('stony: only once alkalinity holds steady, tested every few days')]
      : []),
  ];
}

const bands: readonly FlowBand[] = ['low', 'medium', 'high'];

function flow(entry: CoralEntry, wanted: Wanted): readonly Said[] {
  if (wanted.flow === undefined) return [];
  const at = bands.indexOf(wanted.flow);
  const { min, max } = entry.flow;
  if (at >= bands.indexOf(min) && at <= bands.indexOf(max)) return [];
  return [no(`wants ${min === max ? min : `${min} to ${max}`} flow`)];
}

function ground(entry: CoralEntry, wanted: Wanted): readonly Said[] {
  const { value } = entry.ground;
  return wanted.ground === undefined || value.includes(wanted.ground) ? [] : [no(`belongs on ${value}`)];
}

/** So much wider than a guessed glass is deep a coral is still trimmed rather than left out: project rule. */
const GUESSED = 1.25;

/**
 * Project rule: against it when it stings further than the narrower side, or its usual width is more than that; to watch
 * from three quarters of that. Mats of polyps are trimmed piece by piece.
 */
function size(
  { size: { practicalMaxCm }, sting, group }: CoralEntry,
  { box, boxGuessed }: Wanted,
): readonly Said[] {
  if (box === undefined) return [];
  const sideCm = Math.min(box.lengthCm, box.widthCm);
  const words = `grows to some ${cm(practicalMaxCm)}`;
  if (sting.keepClearCm > sideCm)
    return [no(`stings ${cm(sting.keepClearCm)} wide, more than this glass gives`)];
  const isMat = group === 'zoanthid' || group === 'mushroom';
  if (!isMat && practicalMaxCm > sideCm * (boxGuessed === true ? GUESSED : 1))
    return [no(`${words}, wider than the glass (${cm(sideCm)})`)];
  return practicalMaxCm > (sideCm * 3) / 4 ? [mind(`${words}: plan to trim it`)] : [];
}

function spreading({ group, sting }: CoralEntry): readonly Said[] {
  return group === 'soft' && sting.weapons.includes('overgrowth')
    ? [mind('it spreads: a rock of its own')]
    : [];
}

/** The neighbour it wants most room from. Project rule: against it when that is more than half the length. */
function beside(entry: CoralEntry, { neighbours = [], box }: Wanted): readonly Said[] {
  const [worst] = neighbours
    .map((other) => ({ other, needCm: pairRoom(entry, other.entry).moveBelowCm }))
    .filter(({ needCm }) => needCm > 0)
    .sort((a, b) => b.needCm - a.needCm);
  if (worst === undefined) return [];
  const words = `${cm(worst.needCm)} from your ${worst.other.label}`;
  return box !== undefined && worst.needCm > box.lengthCm / 2
    ? [no(`wants ${words}, more than this glass gives`)]
    : [mind(`keep ${words}`)];
}
