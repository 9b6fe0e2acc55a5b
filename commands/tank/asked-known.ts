import { Problem } from '../../core/problem.ts';
import { volume, volumeAsWritten } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import type { Likely } from '../../core/tank/displaced.ts';
import { capacityL } from '../../core/tank/shape.ts';
import { fits } from '../../core/tank/volume.ts';
import { askedDilution } from './asked-dilution.ts';
import type { AskedSize } from './asked-size.ts';
import type { VolumeInput } from './options.ts';
import { rangeFact, readShare, type AskedVolume, type VolumeUnit } from './volume-parts.ts';
import { say } from '../../core/wording/say.ts';

/** Net water that is known without the glass; a size given with it is only the display. @throws Problem where it does not fit. */
export function askedKnown(input: VolumeInput, glass: AskedSize | undefined, unit: VolumeUnit): AskedVolume {
  if (input.volume !== undefined && input.dilution !== undefined)
    throw new Problem(say('tank.giveNetVolumeOr'), { field: 'dilution' });
  for (const field of ['rock', 'sand', 'height'] as const) {
    if (input[field] === undefined) continue;
    throw new Problem(say('tank.netWaterWithoutRock', { field }), {
      field,
      given: input[field],
      hint: say('tank.leaveOutOrLeave', { field }),
    });
  }
  const measured = input.dilution === undefined ? undefined : askedDilution(input.dilution);
  const water = measured ?? given(input.volume ?? '', unit);
  const sumpL = input.sump === undefined ? undefined : sumpWater(input.sump, glass, unit);
  const displayL = glass === undefined ? undefined : capacityL(glass.size);
  checkFit(water.netL, displayL, sumpL, input);
  return {
    ...water,
    displayL,
    read: [
      ...water.read,
      ...(sumpL === undefined ? [] : [`${volume(sumpL)} of it in the sump`]),
      ...(glass?.read ?? []),
    ],
    facts: measured === undefined ? [] : [rangeFact(water.netL)],
    working: [...water.working, ...(glass?.working ?? [])],
    cautions: [...water.cautions, ...littleWater(water.netL, displayL)],
    sources: [
      ...(measured === undefined ? [] : (['mixing', 'iupac21'] as const)),
      ...(glass === undefined ? [] : (['geometry'] as const)),
      'practice',
    ],
  };
}

function given(
  text: string,
  unit: VolumeUnit,
): Pick<AskedVolume, 'netL' | 'basis' | 'read' | 'working' | 'cautions'> {
  const found = readQuantity('volume', text, { field: 'volume', fallback: unit });
  const written = volumeAsWritten(found.value, found.written, found.unit);
  return {
    netL: { low: found.value, likely: found.value, high: found.value },
    basis: `net volume as given, ${written}`,
    read: [`${written}, taken as the net water of the whole system`, ...found.notes],
    working: [],
    cautions: [
      'A tank holds less water than the size it is sold by: if this is that size, give the size of the glass with rock and sand instead.',
    ],
  };
}

/** Litres of the option `sump` beside a display that may be unknown. */
function sumpWater(text: string, glass: AskedSize | undefined, unit: VolumeUnit): number {
  const share = readShare(text, 'sump');
  if (share === undefined) return readQuantity('volume', text, { field: 'sump', fallback: unit }).value;
  if (glass !== undefined) return (share / 100) * capacityL(glass.size);
  throw new Problem(say('tank.shareDisplayNeedsIts'), {
    field: 'sump',
    given: text,
    hint: say('tank.giveSizeOrSump'),
  });
}

/** Less water than this share of the glass is worth a second look: this project's own choice. */
const LITTLE_SHARE = 0.5;

function littleWater(netL: Likely, displayL: number | undefined): readonly string[] {
  if (displayL === undefined || netL.high >= displayL * LITTLE_SHARE) return [];
  return [
    `That is less than half of what the glass holds (${volume(displayL)}): check the volume and its unit.`,
  ];
}

function checkFit(
  netL: Likely,
  displayL: number | undefined,
  sumpL: number | undefined,
  input: VolumeInput,
): void {
  if (sumpL !== undefined && sumpL >= netL.high) {
    throw new Problem(say('tank.sumpWouldHoldAll'), { field: 'sump', given: input.sump });
  }
  if (displayL === undefined || fits(netL.low, displayL, sumpL)) return;
  const beside = sumpL === undefined ? '' : ` and ${volume(sumpL)} of sump`;
  throw new Problem(
    say('tank.muchWaterDoesNot', {
      value: input.size ?? '',
      displayL: volume(displayL),
      beside,
      likely: volume(netL.likely),
    }),
    {
      field: input.volume === undefined ? 'dilution' : 'volume',
      given: input.volume ?? input.dilution,
      limit: say('tank.atMost', { amount: volume(displayL + (sumpL ?? 0)) }),
      hint: say('tank.ifCountsSumpAdd'),
    },
  );
}
