import type { Frame } from '../../../core/language/frame.ts';
import { lengthsSaid } from '../../../core/language/lengths-said.ts';
import { met } from '../../../core/language/met.ts';
import type { Said } from '../../../core/language/said.ts';
import { cmOf, sidesText, type Sides } from '../../../core/language/side-units.ts';
import { tankSaid, type TankSaid } from '../../../core/language/tank-said.ts';
import { insideOf } from '../../../core/tank/glass.ts';
import type { Scanned } from '../../../core/language/tokens.ts';
import type { Shape } from '../../../core/tank/shape.ts';
import { forms, readSize } from '../../../core/tank/size.ts';
import type { VolumeInput } from '../../tank/options.ts';
import { attempt } from './attempt.ts';
import { rockIn, sumpIn } from './tank-contents.ts';

/** A tank told by its sides, as the options of `/tank new` take it. */
export interface TankSize {
  readonly said: TankSaid;
  readonly sides: Sides;
  readonly input: VolumeInput & { readonly size: string };
  /** Lengths that no option takes, as they were written. */
  readonly left: readonly string[];
}

/** Air of a hand's width: 8 to 10 cm, the middle of it; common practice, no source. */
export const HAND_CM = 9;

/** The lengths of a message sorted; undefined where it says none. */
export function tankSaidIn({ reading: { scanned, said } }: Frame): TankSaid | undefined {
  const lengths = lengthsSaid(scanned, said);
  return lengths.length === 0 ? undefined : tankSaid(scanned, lengths);
}

/** The glass, its water and what stands in it; undefined where a side is missing or the shape has no sum. */
export function tankSizeIn(frame: Frame): TankSize | undefined {
  const { scanned, said: all } = frame.reading;
  const said = tankSaidIn(frame);
  const given = said === undefined ? undefined : sidesOf(said, isCubeSaid(scanned));
  if (said === undefined || given === undefined || said.shape === 'other') return undefined;
  const { shape, glass, gap, sand } = said;
  const isLow = said.level !== undefined && !given.includes(said.level) && isShallow(said.level, given);
  const [level, left] =
    isLow && said.level !== undefined ? [undefined, [...said.left, said.level]] : [said.level, said.left];
  const others = [glass, gap, level, sand, ...left].filter((one) => one !== undefined);
  const sides = sidesText(scanned.text, given, others);
  const { unit = 'cm' } = sides;
  const pane = withBare(glass, unit === 'in' ? 'in' : 'mm');
  const measured = said.measured ?? (pane === undefined ? 'inside' : undefined);
  const thick = measured === 'inside' ? undefined : pane;
  const air = said.isHand ? HAND_CM : gap === undefined ? undefined : cmOf(gap, unit);
  const sump = sumpIn(scanned, all, said.sump, unit);
  return {
    said,
    sides,
    input: {
      size: sides.text,
      measured,
      glass: thick,
      shape: shape === 'box' ? undefined : shape,
      height:
        withBare(level, unit) ??
        (air === undefined ? undefined : filledTo(sides.text, shape, glass, thick, air)),
      sand: withBare(sand, unit),
      rock: rockIn(scanned, all),
      sump,
    },
    left: [...left, ...(sump === undefined ? said.sump : [])].map(({ text }) => text),
  };
}

/** A tank filled so low is misheard: own choice. */
const LEAST_FILLED = 0.3;

function isShallow(level: Said, sides: readonly Said[]): boolean {
  const height = sides.at(-1);
  const bare = (height?.number.unit ?? '') || level.number.unit || 'cm';
  return height !== undefined && cmOf(level, bare) < LEAST_FILLED * cmOf(height, bare);
}

/** The lengths of the shape in their order; undefined where one is missing. */
function sidesOf({ shape, sides, level }: TankSaid, isCube: boolean): readonly Said[] | undefined {
  if (shape === 'other') return undefined;
  const needed = forms[shape].length;
  const [first, second, third] = sides;
  if (first !== undefined && second === undefined && isCube) return [first, first, first];
  const all = sides.length === needed - 1 && level !== undefined ? [...sides, level] : sides;
  if (all.length !== needed) return undefined;
  const isDeeper = second !== undefined && third !== undefined && second.number.value > third.number.value;
  return shape === 'bow front' && isDeeper
    ? [first, third, second, ...all.slice(3)].filter((one) => one !== undefined)
    : all;
}

function withBare(one: Said | undefined, unit: string): string | undefined {
  return one === undefined || one.number.unit !== '' ? one?.text : `${one.number.number} ${unit}`;
}

/** How high the water stands inside with so much air at the top; undefined where the unit is not known. */
function filledTo(
  size: string,
  shape: Shape,
  glass: Said | undefined,
  thick: string | undefined,
  airCm: number,
): string | undefined {
  return attempt(() => {
    const given = readSize(size, shape, 'size');
    const inner =
      thick === undefined || glass === undefined
        ? given
        : insideOf(given, cmOf(glass, thick.split(' ').at(-1)));
    const high = inner.heightCm - airCm;
    return high > 0 ? `${Number(high.toFixed(2))} cm` : undefined;
  });
}

/** "a 16 inch cube", "45 cube": there the word is read as what the number counts. */
function isCubeSaid(scanned: Scanned): boolean {
  return met(scanned, 'looks.cube') || scanned.numbers.some(({ unit }) => /^cubes?$/.test(unit));
}
