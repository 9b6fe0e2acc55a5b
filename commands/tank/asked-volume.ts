import { Problem } from '../../core/problem.ts';
import { volume } from '../../core/quantity/format.ts';
import { askedContents } from './asked-contents.ts';
import { askedKnown } from './asked-known.ts';
import { askedSize } from './asked-size.ts';
import { volumeOptions, type VolumeInput } from './options.ts';
import type { AskedVolume, VolumeUnit } from './volume-parts.ts';
import { say } from '../../core/wording/say.ts';

/** Least and most net water of a tank, litres. */
const NET_L = { min: 1, max: 1e6 } as const;

/** Whether any option about the water is given. */
export function saysVolume(input: VolumeInput): boolean {
  return Object.keys(volumeOptions).some((name) => input[name as keyof VolumeInput] !== undefined);
}

/**
 * Net water from what was given: the volume itself, a dose that measured it, or size and contents. `unit` is the unit
 * of a number without one.
 *
 * @throws Problem when none is given, two are, or they cannot all be true.
 */
export function askedVolume(input: VolumeInput, unit: VolumeUnit): AskedVolume {
  const { volume: net, dilution, size } = input;
  const glass = askedSize(input);
  if (net === undefined && dilution === undefined && size === undefined) {
    throw new Problem(say('tank.iNeedWaterIts'), {
      field: 'volume',
      hint: say('tank.volume240LOr'),
    });
  }
  const found =
    net === undefined && dilution === undefined
      ? askedContents(input, glass, unit)
      : askedKnown(input, glass, unit);
  if (found.netL.likely >= NET_L.min && found.netL.likely <= NET_L.max) return found;
  throw new Problem(say('tank.noVolumeTank'), {
    field: net === undefined ? (size === undefined ? 'dilution' : 'size') : 'volume',
    given: volume(found.netL.likely),
    limit: say('tank.limitVolume', { min: NET_L.min, max: NET_L.max }),
  });
}
