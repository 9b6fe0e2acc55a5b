import { z } from 'zod';
import { fixed } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { conductivityMScm, pss78Range } from '../../core/water/conductivity.ts';
import { referenceSalinityGKg } from '../../core/water/reference-seawater.ts';
import { readSalinity, type SalinityReading } from '../../core/water/salinity-reading.ts';
import { densityKgM3 } from '../../core/water/seawater.ts';
import { gravityPairs, specificGravity, type GravityPair } from '../../core/water/specific-gravity.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { asRead, gravity, ppt, remarkOn, understood } from './print.ts';
import { remarkFirst } from '../short/remark-first.ts';

const pairs = Object.keys(gravityPairs) as readonly GravityPair[];

export const convertSalinityCommand = defineCommand({
  path: ['salinity', 'convert'],
  summary: 'A salinity reading on every scale: ppt, g/kg, specific gravity, conductivity',
  example: '/salinity convert reading:1.025',
  options: z.strictObject({
    reading: textOption('The reading, e.g. 1.025, 35 ppt, 53 mS/cm'),
    // Left out it says the instrument compensates; the tank's own would make a glass hydrometer of a refractometer.
    temperature: quantityOption(
      'temperature',
      'Water temperature: for a plain conductivity or a glass hydrometer',
    ).optional(),
    with: z
      .enum(pairs)
      .meta({ description: 'Reference temperatures, of the specific gravity; 25/25 if left out' })
      .optional(),
  }),
  run: (input): Answer => {
    const at =
      input.temperature === undefined
        ? undefined
        : readQuantity('temperature', input.temperature, { field: 'temperature' });
    const reading = readSalinity(input.reading, {
      field: 'reading',
      pair: input.with,
      waterTempC: at?.value,
    });
    return converted(reading, at?.notes ?? []);
  },
});

function converted(reading: SalinityReading, notes: readonly string[]): Answer {
  const s = reading.practicalSalinity;
  const others = [
    ...(reading.scale === 'ppt' ? [] : [ppt(s)]),
    ...(reading.scale === 'SG' ? [] : [`${gravity(specificGravity(s, '25/25'))} SG (25/25)`]),
    ...(reading.scale === 'mS/cm' || s < pss78Range.salinityMin
      ? []
      : [`${fixed(conductivityMScm(s, 25), 1)} mS/cm at 25 °C`]),
  ];
  const given = answer({
    headline: `${asRead(reading)} is ${others.join(', ')}.`,
    read: [...understood('reading', reading), ...notes],
    facts: [
      { label: 'practical salinity (ppt, psu)', value: fixed(s, 2) },
      { label: 'salt by mass', value: `${fixed(referenceSalinityGKg(s), 2)} g/kg` },
      ...pairs.map((pair) => ({
        label: `specific gravity ${gravityPairs[pair].name}`,
        value: gravity(specificGravity(s, pair)),
      })),
      ...conductivityFacts(s),
      { label: 'density at 25 °C', value: `${fixed(densityKgM3(s, 25), 2)} kg/m³` },
    ],
    isList: true,
    working: [
      'ppt is used here for practical salinity; 35 ppt is 35.165 g of salt per kg and 53.07 mS/cm at 25 °C.',
    ],
    cautions: [
      ...(reading.scale === 'SG' && reading.waterTempC === undefined ? [rangeOfPairs(reading.written)] : []),
      ...(reading.scale === 'mS/cm'
        ? [
            'It depends on temperature unless the probe compensates to 25 °C; 35 ppt shows 53 mS/cm there. /salinity check compares both.',
          ]
        : []),
      'A number is as good as its instrument: check it on a 35 ppt standard.',
    ],
    sources: ['fm83', 'm08'],
  });
  return remarkFirst(remarkOn(reading), given);
}

function conductivityFacts(s: number): readonly Fact[] {
  if (s < pss78Range.salinityMin) return [];
  return [25, 20].map((tempC) => ({
    label: `conductivity at ${tempC} °C`,
    value: `${fixed(conductivityMScm(s, tempC), 2)} mS/cm`,
  }));
}

/** The same specific gravity read on each pair: how far the answer depends on the instrument's scale. */
function rangeOfPairs(sg: number): string {
  const values = pairs.flatMap((pair) => {
    if (sg > specificGravity(42, pair)) return [];
    return [`${ppt(readSalinity(String(sg), { field: 'reading', pair }).practicalSalinity)} on ${pair}`];
  });
  return `A specific gravity depends on the temperatures printed on the instrument: ${values.join(', ')}.`;
}
