import { z } from 'zod';
import { levelParts } from './parts.ts';
import { parameterIds, type ParameterId } from '../water/parameter.ts';

/** A quantity as text for `readQuantity`: number and unit in plain form, "8.2 dkh", "75 gal", "40". */
const quantity = z.string();

/** A level of one parameter with the part it plays. `everyDays` is set for a rate. */
const levelSchema = z.strictObject({
  of: z.enum(parameterIds as [ParameterId, ...ParameterId[]]),
  part: z.enum(levelParts),
  text: quantity,
  value: z.number(),
  everyDays: z.number().optional(),
  /** The moment or day said beside it, as it was written. */
  moment: z.string().optional(),
});
export type Level = z.infer<typeof levelSchema>;

/** What a bottle says of itself: so much of it raises so much water by so much; `per` is left out for the system. */
const bottleSchema = z.strictObject({
  of: levelSchema.shape.of,
  dose: quantity,
  per: quantity.optional(),
  raises: quantity,
});
export type Bottle = z.infer<typeof bottleSchema>;

/**
 * All a message can say that a command asks for. Every slot is left out where nothing was said of it; nothing is made up.
 */
export const slotsSchema = z.object({
  /** The parameter it is about. */
  of: levelSchema.shape.of.optional(),
  /** Every level said, in order. */
  levels: z.array(levelSchema).optional(),
  /** Levels of `of`: as it is, as it was, as it should be, how far it shall move or moved. */
  now: quantity.optional(),
  was: quantity.optional(),
  wanted: quantity.optional(),
  change: quantity.optional(),
  /** Rise or use of `of` in `rateDays` days. */
  rate: quantity.optional(),
  rateDays: z.number().optional(),
  /** `of` in other water: the new mix, a standard, the tap. */
  other: quantity.optional(),
  /** A border to keep to or to be told of. */
  limit: quantity.optional(),
  /** Water of the system: display, sump and all. */
  volume: quantity.optional(),
  /** A container, a stock bottle, a part of the system. */
  container: quantity.optional(),
  /** A salt by the member's own word, and all that were named. */
  salt: z.string().optional(),
  salts: z.array(z.string()).optional(),
  /** How much of it: grams, millilitres, spoons. */
  amount: quantity.optional(),
  amounts: z.array(quantity).optional(),
  amountDays: z.number().optional(),
  strength: quantity.optional(),
  bottle: bottleSchema.optional(),
  /** Water changed: a share, or a volume, and how often. */
  share: quantity.optional(),
  shares: z.array(quantity).optional(),
  changed: quantity.optional(),
  /** Every volume of a change, in order. */
  batches: z.array(quantity).optional(),
  everyDays: z.number().optional(),
  /** Water that comes or goes by itself or bit by bit, as a volume or a share: evaporation, top-off, a slow change. */
  waterRate: quantity.optional(),
  waterRateDays: z.number().optional(),
  /** How long. */
  span: quantity.optional(),
  spans: z.array(quantity).optional(),
  /** Power of gear, W, and what a battery holds, Wh or Ah, in order. */
  watts: z.array(quantity).optional(),
  batteries: z.array(quantity).optional(),
  /** Lamp: hours and percent, in order; light measured. */
  hours: z.array(quantity).optional(),
  percents: z.array(quantity).optional(),
  light: z.array(quantity).optional(),
  lux: z.array(quantity).optional(),
  /** Distances and sizes, in order. */
  lengths: z.array(quantity).optional(),
  /** Three sides of a box, as `readQuantity` takes them: "120 x 50 x 50 cm". */
  box: z.string().optional(),
  /** Heads or polyps of a coral: "2 heads". */
  heads: z.string().optional(),
  temperature: quantity.optional(),
  otherTemperature: quantity.optional(),
  salinity: quantity.optional(),
  /** Names of corals, in order, as they were written. */
  corals: z.array(z.string()).optional(),
  /** Numbers without a unit that no other slot took. */
  counts: z.array(z.number()).optional(),
  /** Times and days, as they were written. */
  moments: z.array(z.string()).optional(),
});

export type Slots = z.infer<typeof slotsSchema>;
export type SlotName = keyof Slots;

/** Slots of what was said, without the places of what was not. */
export function withoutUndefined(slots: { readonly [Name in SlotName]?: unknown }): Slots {
  return Object.fromEntries(Object.entries(slots).filter(([, value]) => value !== undefined));
}

/** Slots that belong to the one parameter a message is about: its levels and how it moves. */
export const parameterSlots = [
  'of',
  'now',
  'was',
  'wanted',
  'change',
  'rate',
  'rateDays',
] as const satisfies readonly SlotName[];
