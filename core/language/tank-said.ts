import { forms } from '../tank/size.ts';
import type { Shape } from '../tank/shape.ts';
import { BOX_SIDES } from './box-said.ts';
import { JOINED_BEFORE } from './lengths-said.ts';
import { met } from './met.ts';
import type { Said } from './said.ts';
import { cmOf } from './side-units.ts';
import { measuredIn, shapeIn } from './tank-shape.ts';
import { scan, type Scanned } from './tokens.ts';

/** What the lengths of a message are of a tank: its sides, and what is no side of it. */
export interface TankSaid {
  readonly shape: Shape | 'other';
  readonly measured?: 'inside' | 'outside' | undefined;
  readonly sides: readonly Said[];
  /** One pane's thickness. */
  readonly glass?: Said | undefined;
  /** Air under the rim, or how high the water stands. */
  readonly gap?: Said | undefined;
  readonly level?: Said | undefined;
  readonly sand?: Said | undefined;
  /** The gap was said as a hand's width. */
  readonly isHand: boolean;
  /** Sides of the water in a sump. */
  readonly sump: readonly Said[];
  /** Lengths that are none of these. */
  readonly left: readonly Said[];
}

type Role = 'sides' | 'glass' | 'gap' | 'level' | 'sand' | 'sump' | 'left';

/** Letters of a clause beside a length that may say what it is of. Own choice. */
const NEAR = 28;
/** A pane is thinner than this, air under the rim less than this share of the longest side; own choices. */
const MOST_GLASS_CM = 4;
const MOST_GAP = 0.3;

const HAND = /\b(?:hand'?s?[ -](?:width|breadth)|handsbreadth|hand of air)\b/;
const SUMP =
  /\b(?:sump|basin|refugium|(?:below|under|underneath|beneath) (?:it|that|her|the (?:tank|display)))\b[^.;!?]*$/;
/** "sump 60x40x25", "15 cm of water in the sump": its sides wherever they stand. */
const SUMP_HERE = /\bsump(?:'?s| is| box(?: of)?)?\s*$/;
const IN_SUMP = /^\s*(?:of )?water in (?:the |her |his |my )?sump\b/;
/** "with thick glass, 15 mm": over a comma. */
const PANE = /\b(?:glass|panes?|acrylic|ply),\s*$/;
const WATER_TO =
  /\b(?:water(?: (?:up|is|now|stands?|stood|level|line|height|reaches))*(?: (?:to|at|until|till|of))?|fill(?:ed|s)?(?: up)?(?: (?:to|until|till|at))?|up to)\s*$/;
const OF_WATER = /^\s*(?:deep )?(?:of )?water\b/;
const DOWN = /^\s*(?:\w+ )?down\b/;

/** Sorts the lengths by the words beside each: "water stops 5 cm under the rim", "3 in sand", "10 mm glass". */
export function tankSaid(scanned: Scanned, lengths: readonly Said[]): TankSaid {
  const shape = shapeIn(scanned);
  const needed = shape === 'other' ? 0 : forms[shape].length;
  const found: Record<Role, Said[]> = {
    sides: [],
    glass: [],
    gap: [],
    level: [],
    sand: [],
    sump: [],
    left: [],
  };
  for (const [at, one] of lengths.entries()) {
    const role = isSump(scanned, lengths, at, found.sump.length)
      ? 'sump'
      : roleOf(scanned, lengths, at, found.sides.length < needed);
    const isTaken = role !== 'sides' && role !== 'sump' && found[role].length > 0;
    found[isTaken ? 'left' : role].push(one);
  }
  const [gap] = found.gap;
  return {
    shape,
    measured: measuredIn(scanned, found.sides),
    sides: found.sides,
    glass: found.glass[0],
    gap,
    level: found.level[0],
    sand: found.sand[0],
    isHand: gap === undefined && HAND.test(scanned.text),
    sump: found.sump,
    left: found.left,
  };
}

function isSump({ text }: Scanned, lengths: readonly Said[], at: number, before: number): boolean {
  const one = lengths[at];
  if (one === undefined) return false;
  const isFirst = SUMP_HERE.test(text.slice(0, one.number.start)) || IN_SUMP.test(text.slice(one.number.end));
  return one.part === 'part' || isFirst || before % BOX_SIDES !== 0;
}

function roleOf({ text }: Scanned, lengths: readonly Said[], at: number, isOpen: boolean): Role {
  const one = lengths[at];
  if (one === undefined) return 'left';
  const before = text.slice(0, one.number.start);
  const behind = text.slice(one.number.end, lengths[at + 1]?.number.start ?? text.length);
  const since = before.slice(lengths[at - 1]?.number.end ?? 0);
  const words = scan(wordsBeside(since, behind));
  const bare = lengths.find(({ number: { unit } }) => unit !== '' && unit !== 'mm')?.number.unit;
  const longestCm = Math.max(...lengths.map((each) => cmOf(each, bare)));
  const ownCm = cmOf(one, bare);
  if (met(words, 'places.sandBed')) return 'sand';
  const isPane = met(words, 'hardware.thickness') || PANE.test(since);
  if (isPane && isThin(one, bare)) return 'glass';
  const isGap = met(words, 'places.rim', 'places.airGap') || DOWN.test(behind);
  if (isGap && ownCm < MOST_GAP * longestCm) return 'gap';
  if (isOpen && JOINED_BEFORE.test(before)) return 'sides';
  if (!isOpen && SUMP.test(before)) return 'sump';
  if (WATER_TO.test(before) || OF_WATER.test(behind)) return 'level';
  if (isOpen) return 'sides';
  return one.number.unit === 'mm' && isThin(one, bare) ? 'glass' : 'left';
}

/** "glass 8" beside sides in cm is in mm. */
function isThin(one: Said, bare: string | undefined): boolean {
  const isMetric = bare === undefined || /^(?:cm|m$)/.test(bare);
  return cmOf(one, isMetric ? 'mm' : bare) < MOST_GLASS_CM;
}

/** The words behind a length up to the next stop where they say what it is of, else those before it. */
function wordsBeside(before: string, behind: string): string {
  const own = /^[^,.;?!]*/.exec(behind.slice(0, NEAR))?.[0] ?? '';
  const isSaid = met(scan(own), 'places.sandBed', 'places.rim', 'places.airGap', 'hardware.thickness');
  if (isSaid) return own.split(/\b(?:and|with)\b/)[0] ?? own;
  return /[^,.;?!]*$/.exec(before.slice(-NEAR))?.[0] ?? '';
}
