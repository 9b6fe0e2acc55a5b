import { Problem } from '../../core/problem.ts';
import { fixed, mass, volume } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { floorCm2 } from '../../core/tank/shape.ts';
import { waterIn, type Contents } from '../../core/tank/volume.ts';
import type { AskedSize } from './asked-size.ts';
import type { VolumeInput } from './options.ts';
import { rangeFact, readShare, type AskedVolume, type VolumeUnit } from './volume-parts.ts';
import { say } from '../../core/wording/say.ts';

/** Net water worked out from the glass and what stands in it. @throws Problem where they do not fit. */
export function askedContents(
  input: VolumeInput,
  glass: AskedSize | undefined,
  unit: VolumeUnit,
): AskedVolume {
  if (glass === undefined) throw new Error('no size to work from');
  if (!glass.inside) {
    throw new Problem(say('tank.wasSizeMeasuredInside'), {
      field: 'measured',
      given: input.size,
      choices: ['inside', 'outside'],
      hint: say('tank.outsideNeedsThicknessToo'),
    });
  }
  const rock = askedRock(input.rock);
  const sandCm = length(input.sand, 'sand');
  const waterCm = length(input.height, 'height');
  const sump = askedSump(input.sump, unit);
  const contents: Contents = { size: glass.size, waterCm, rock: rock?.value, sandCm, sump: sump?.value };
  const found = waterIn(contents);
  const line = waterCm === undefined ? 'water 2 to 5 cm below the rim' : `water ${fixed(waterCm, 1)} cm high`;
  const parts = [
    line,
    ...(rock === undefined ? [] : [`less rock ${rock.words}`]),
    ...(sandCm === undefined ? [] : [`less sand ${fixed(sandCm, 1)} cm`]),
    ...(sump === undefined ? [] : [`plus sump ${sump.words}`]),
  ];
  return {
    netL: found.netL,
    displayL: found.displayL,
    basis: [glass.words, ...parts].join(', '),
    read: [
      ...glass.read,
      ...parts,
      ...(waterCm === undefined ? ['the water line is not said; 3 cm below the rim is used'] : []),
      ...(sump?.notes ?? []),
    ],
    facts: [rangeFact(found.netL)],
    working: workingOf(glass, found, { rock: rock?.words, sandCm }),
    cautions: cautionsOf(rock !== undefined || sandCm !== undefined),
    sources: ['geometry', 'practice'],
  };
}

const ROCK_BASIS = {
  mass: '2.2 to 2.7 g/mL, common practice',
  share: 'a guess, taken as a third more or less',
} as const;

function minus(litres: number): string {
  return ` − ${volume(litres)}`;
}

function workingOf(
  glass: AskedSize,
  found: ReturnType<typeof waterIn>,
  { rock, sandCm }: { rock: string | undefined; sandCm: number | undefined },
): readonly string[] {
  const { waterCm, waterL, rockL, sandL, sumpL, netL } = found;
  const taken = [
    rock === undefined ? '' : minus(rockL.likely),
    sandCm === undefined ? '' : minus(sandL.likely),
    sumpL === 0 ? '' : ` + ${volume(sumpL)}`,
  ].join('');
  return [
    ...glass.working,
    `Floor ${fixed(floorCm2(glass.size), 0)} cm² x ${fixed(waterCm.likely, 1)} cm of water = ${volume(waterL.likely)}`,
    ...(rock === undefined
      ? []
      : [
          `Rock ${rock} pushes aside ${volume(rockL.likely)} (${volume(rockL.low)} to ${volume(rockL.high)}): ${ROCK_BASIS[/%/.test(rock) ? 'share' : 'mass']}`,
        ]),
    ...(sandCm === undefined
      ? []
      : [
          `Sand ${fixed(sandCm, 1)} cm pushes aside ${volume(sandL.likely)}: 35 to 45 % of the bed is water, common practice`,
        ]),
    ...(taken === '' ? [] : [`Net: ${volume(waterL.likely)}${taken} = ${volume(netL.likely)}`]),
  ];
}

function cautionsOf(hasContents: boolean): readonly string[] {
  return [
    ...(hasContents
      ? []
      : ['No rock or sand is taken off, so this is the most it can be: add rock and sand if there are any.']),
    'Worked out, not measured: count the litres when you next fill it, or measure by a small known dose.',
  ];
}

function length(text: string | undefined, field: string): number | undefined {
  return text === undefined ? undefined : readQuantity('length', text, { field }).value;
}

function askedRock(
  text: string | undefined,
): { value: NonNullable<Contents['rock']>; words: string } | undefined {
  if (text === undefined) return undefined;
  const percent = readShare(text, 'rock');
  if (percent !== undefined)
    return {
      value: { percent },
      words: `${fixed(percent, 1)} % of the display`,
    };
  const { value: massG } = readQuantity('mass', text, { field: 'rock' });
  return { value: { massG }, words: mass(massG) };
}

function askedSump(
  text: string | undefined,
  unit: VolumeUnit,
): { value: NonNullable<Contents['sump']>; words: string; notes: readonly string[] } | undefined {
  if (text === undefined) return undefined;
  const percent = readShare(text, 'sump');
  if (percent !== undefined)
    return { value: { percent }, words: `${fixed(percent, 1)} % of the display`, notes: [] };
  const { value: volumeL, notes } = readQuantity('volume', text, { field: 'sump', fallback: unit });
  return { value: { volumeL }, words: volume(volumeL), notes: notes.map((note) => `sump: ${note}`) };
}
