import { z } from 'zod';
import { flowDirections } from '../../core/corals/scene.ts';
import { shapes } from '../../core/tank/shape.ts';
import { tankKinds } from '../../core/water/targets.ts';
import { salinityInstruments } from '../keep.ts';
import { quantityOption, textOption } from '../options.ts';
import { unitOptions } from '../unit-options.ts';

/** Longest text of a size: it is kept with the tank. */
const MAX_SIZE = 60;

/** Volumes are plain texts here: a number without a unit is read in the unit chosen for this very tank. */
export const volumeOptions = {
  volume: textOption('Net water in all, without rock and sand, e.g. 240 L or 63 gal').optional(),
  size: textOption('The glass, e.g. 120 x 50 x 50 cm or 36 x 18 x 18 in', { max: MAX_SIZE }).optional(),
  measured: z.enum(['inside', 'outside']).describe('Where the size was measured').optional(),
  glass: quantityOption('length', 'Thickness of a pane, if measured outside, e.g. 12 mm').optional(),
  height: quantityOption('length', 'Height of the water, e.g. 46 cm').optional(),
  shape: z.enum(shapes).describe('Shape; a box where not said').optional(),
  sump: textOption('Water in the running sump: 60 L, 60 x 40 x 25 cm, or 20 % of the display').optional(),
  rock: textOption('Rock: 30 kg, or its share, 15 %').optional(),
  sand: quantityOption('length', 'Depth of the sand, e.g. 4 cm').optional(),
  dilution: textOption('A dose that told the water: 20 g baking soda, 7.0 to 8.1 dKH').optional(),
};

export const profileOptions = {
  ...volumeOptions,
  kind: z.enum(tankKinds).describe('What is kept; sets the usual targets').optional(),
  started: textOption('When filled: 2025-01-03 or 3 Jan 2025').optional(),
  instrument: z.enum(salinityInstruments).describe('What you measure salinity with').optional(),
  zone: textOption('Time zone if elsewhere, e.g. Europe/Berlin; "mine" takes it back', {
    suggest: 'zone',
    max: 64,
  }).optional(),
  flow: z.enum(flowDirections).describe('Where the water goes, seen from the front').optional(),
  hours: quantityOption('hours', 'Full light a day, e.g. 9 h').optional(),
  units: unitOptions.volume,
  alkalinity: unitOptions.alkalinity,
  temperature: unitOptions.temperature,
  length: unitOptions.length,
  targets: textOption('Own targets: alk 8-9, ca 420-440; "alk default" takes one back').optional(),
};

type Texts<T> = {
  readonly [K in keyof T]?: T[K] extends z.ZodOptional<infer S> ? z.infer<S> | undefined : never;
};
export type VolumeInput = Texts<typeof volumeOptions>;
export type ProfileInput = Texts<typeof profileOptions>;
