import { inRange } from '../problem.ts';

/** What a bottle does by its own words: `doseL` of it raises `perL` of water by `raises`, in any unit of a level. */
export interface BottleStrength {
  readonly doseL: number;
  readonly perL: number;
  readonly raises: number;
}

/**
 * The rise that `amountL` of the bottle makes in `volumeL`, in the unit of `raises`. Everything 0 or more, volumes above 0.
 * Plain proportion. Check: 1 mL lifts 100 L by 0.05 dKH, so 20 mL lift 200 L by 0.5. Doubt: the label, and the volume.
 *
 * @throws Problem outside the ranges.
 */
export function riseOfBottle(
  { doseL, perL, raises }: BottleStrength,
  amountL: number,
  volumeL: number,
): number {
  return (
    (raises * litres(perL) * inRange('amount', amountL, 0, 1e6, 'L')) / (litres(doseL) * litres(volumeL))
  );
}

/**
 * The litres of the bottle for a `rise` in `volumeL`: the inverse. Check: 2 dKH in 128.7 L, where 1 mL lifts 50 L by
 * 0.1 -> 51.5 mL.
 */
export function bottleFor({ doseL, perL, raises }: BottleStrength, rise: number, volumeL: number): number {
  return (rise * litres(doseL) * litres(volumeL)) / (inRange('raises', raises, 1e-9, 1e6, '') * litres(perL));
}

function litres(volumeL: number): number {
  return inRange('volume', volumeL, 1e-6, 1e6, 'L');
}
