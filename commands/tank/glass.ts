import type { Box, Spot } from '../../core/corals/scene.ts';
import { fixed } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { enclosingBox } from '../../core/tank/enclosing-box.ts';
import type { Fact } from '../answer.ts';
import { boxOf } from '../coral/scene-of.ts';
import type { Keep, Tank } from '../keep.ts';
import type { Glass } from '../placed.ts';
import { askedSize } from './asked-size.ts';
import type { ProfileInput } from './options.ts';

/** Keeps the inside of the glass and the flow, where the options give them; returns what was understood. */
export function keepGlass(keep: Keep, tankId: number, input: ProfileInput): readonly string[] {
  const before = keep.glass(tankId);
  const size = askedSize(input);
  if (size === undefined && input.flow === undefined) return [];
  const box = size && enclosingBox(size.size, waterCm(input));
  keep.setGlass(tankId, { box: box ?? before.box, flow: input.flow ?? before.flow });
  return size === undefined || size.size.shape === 'box'
    ? []
    : ['for the places of corals the tank is taken as the box round it; its corners are not water'];
}

function waterCm({ height }: ProfileInput): number | undefined {
  return height === undefined ? undefined : readQuantity('length', height, { field: 'height' }).value;
}

/**
 * After the glass has changed from `before`: corals whose spot was said in words go where the words put them in the new
 * one, and those that would stand outside are told.
 */
export function refit(keep: Keep, tank: Tank, before: Box): readonly string[] {
  const box = boxOf(keep, tank);
  const isSame = sides.every((side) => box[side] === before[side]);
  if (isSame) return [];
  for (const { id, ...placing } of keep.corals(tank.id).filter(({ rough }) => rough))
    keep.changeCoral(tank.id, id, { ...placing, spot: scaled(placing.spot, before, box) });
  const out = keep
    .corals(tank.id)
    .filter(({ spot }) => spot.xCm > box.lengthCm || spot.yCm > box.widthCm || spot.zCm > box.heightCm);
  if (out.length === 0) return [];
  const ids = out.map(({ id }) => id).join(', ');
  return [`In this glass some corals would stand outside: ${ids}. Say where they are with /coral move.`];
}

const sides = ['lengthCm', 'widthCm', 'heightCm'] as const;

function scaled({ xCm, yCm, zCm }: Spot, before: Box, box: Box): Spot {
  return {
    xCm: (xCm / before.lengthCm) * box.lengthCm,
    yCm: (yCm / before.widthCm) * box.widthCm,
    zCm: (zCm / before.heightCm) * box.heightCm,
  };
}

/** The inside of the glass and the flow, side by side. */
export function glassFacts({ box, flow }: Glass): readonly Fact[] {
  return [
    { label: 'inside of the glass', value: box === undefined ? 'not known' : boxWords(box) },
    { label: 'flow', value: flow ?? 'not said' },
  ];
}

/** "118 x 47.6 x 46 cm to the water line". */
export function boxWords({ lengthCm, widthCm, heightCm }: Box): string {
  const [length, width, height] = [lengthCm, widthCm, heightCm].map((side) => fixed(side, 1));
  return `${length} x ${width} x ${height} cm to the water line`;
}
