import { z } from 'zod';
import { handlingCautions } from '../../core/care/hazards.ts';
import { capacity, recipe, saturationGL, type Strength } from '../../core/dosing/limewater.ts';
import { fixed, mass, significant, volume, volumeAsWritten } from '../../core/quantity/format.ts';
import { readQuantity, type Quantity } from '../../core/quantity/read.ts';
import { calciumWithAlkalinity } from '../../core/water/alkalinity.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption } from '../options.ts';
import { askedWater, shown } from './asked.ts';

export const limewaterCommand = defineCommand({
  path: ['dose', 'limewater'],
  summary: 'How much a batch of limewater can hold, and whether lime in the top-off covers the daily use',
  example: '/dose limewater amount:1 gal volume:90 gal goal:0.6 dKH',
  options: z.strictObject({
    amount: quantityOption('volume', 'Top-off a day, e.g. 4 L; without a tank volume, the size of the batch'),
    volume: quantityOption('volume', 'Net water of the whole system, e.g. 340 L').optional(),
    goal: quantityOption('alkalinity', 'Alkalinity the tank uses a day, e.g. 0.6 dKH').optional(),
    temperature: quantityOption('temperature', 'Of the limewater; 25 °C if left out').optional(),
  }),
  run: (input) => {
    const litres = readQuantity('volume', input.amount, { field: 'amount' });
    const warm =
      input.temperature === undefined
        ? undefined
        : readQuantity('temperature', input.temperature, { field: 'temperature' });
    const tempC = warm?.value ?? 25;
    const strength = saturationGL(tempC);
    const asked = { litres, strength, tempC };
    if (input.volume === undefined) return batch(asked);
    const tank = askedWater(input.volume);
    const use =
      input.goal === undefined
        ? undefined
        : readQuantity('alkalinity', input.goal.replace(/\s*(?:\/\s*d(?:ay)?|(?:a|per) day)\s*$/i, ''), {
            field: 'goal',
            fallback: 'dKH',
          });
    return topOff(asked, tank.volumeL, tank.read, use);
  },
});

interface Asked {
  readonly litres: Quantity;
  readonly strength: Strength;
  readonly tempC: number;
}

const CARE = [
  'Drip it slowly, best at night, into strong flow; keep pH at or below 8.5 (common practice) and never pour it in at once.',
  'When evaporation changes with the season, lime in the top-off changes with it: measure alkalinity again.',
  'Cover the vessel: air turns the lime to chalk. Use the clear part only, never shaken up, and leave the last centimetres.',
];
const SOURCES = ['bates56', 'chemtab', 'memory', 'iupac21', 'dkh', 'practice', 'ghs'] as const;

function batch({ litres, strength, tempC }: Asked): Answer {
  const [low, high] = [strength.low * litres.value, strength.high * litres.value];
  return answer({
    headline: `${volume(litres.value)} of limewater cannot hold more than about ${significant(low, 2)} to ${significant(high, 2)} g of calcium hydroxide; anything above that settles and does not make the clear liquid stronger.`,
    read: [
      `a batch of ${volumeAsWritten(litres.value, litres.written, litres.unit)} at ${fixed(tempC, 1)} °C`,
      ...litres.notes,
    ],
    facts: [
      {
        label: 'Clear liquid',
        value: `about ${significant(capacity(1, strength.low, 1).meq, 3)} to ${significant(capacity(1, strength.high, 1).meq, 3)} meq per litre`,
      },
    ],
    steps: [
      `Weigh in about ${significant(high, 2)} g: a small excess is harmless as long as it stays on the bottom.`,
      'Stir once, let it settle for some hours, use the clear part. Do not shake it before dosing.',
      'Work out litres a day from the tank’s measured use: give volume and goal.',
      'Vinegar is not needed: it dissolves a few more grams and adds organic carbon that feeds bacteria.',
    ],
    working: [
      `${significant(strength.low, 4)} to ${significant(strength.high, 4)} g per litre at ${fixed(tempC, 1)} °C × ${volume(litres.value)}`,
    ],
    cautions: [...CARE, ...handlingCautions('lime')],
    sources: SOURCES,
  });
}

function topOff(
  { litres, strength, tempC }: Asked,
  tankL: number,
  tankRead: readonly string[],
  use: Quantity | undefined,
): Answer {
  const full = capacity(litres.value, strength.low, tankL);
  const read = [
    `top-off ${volumeAsWritten(litres.value, litres.written, litres.unit)} a day, limewater at ${fixed(tempC, 1)} °C`,
    ...litres.notes,
    ...tankRead,
    ...(use === undefined ? [] : [`use ${shown('alkalinity', use.value)} a day`, ...use.notes]),
  ];
  const most = `${significant(full.meq, 3)} meq a day: ${shown('alkalinity', full.alkMeqL)} and ${significant(full.calciumMgL, 2)} mg/L calcium`;
  const working = [
    `Saturated limewater: ${significant(strength.low, 4)} g/L (up to ${significant(strength.high, 4)}) = ${significant(capacity(1, strength.low, 1).meq, 3)} meq per litre`,
    `× ${volume(litres.value)} = ${significant(full.meq, 3)} meq; / ${volume(tankL)} = ${shown('alkalinity', full.alkMeqL)}`,
  ];
  const common = {
    read: [...new Set(read)],
    cautions: [...CARE, ...handlingCautions('lime')],
    sources: SOURCES,
  };
  if (use === undefined) {
    return answer({
      ...common,
      headline: `At most ${most} from ${volume(litres.value)} of saturated limewater in ${volume(tankL)}.`,
      steps: [
        'Measure the daily use first (/dose use), then ask again with it as goal: full strength may be too much.',
      ],
      working,
    });
  }
  const lime = recipe(use.value, tankL, litres.value, strength.low);
  const need = `${shown('alkalinity', use.value)} × ${volume(tankL)} = ${significant(lime.needMeq, 3)} meq; × 0.03705 g per meq = ${mass(lime.limeG)}`;
  const facts = [
    { label: 'The top-off can carry', value: most },
    { label: 'The tank uses', value: `${significant(lime.needMeq, 3)} meq a day` },
  ];
  if (lime.ofSaturation > 1) {
    return answer({
      ...common,
      headline: `No: ${volume(litres.value)} of limewater a day gives at most ${shown('alkalinity', full.alkMeqL)} of the ${shown('alkalinity', use.value)} a day.`,
      facts,
      steps: [
        'Let limewater carry part of the use and dose the rest of alkalinity and calcium separately.',
        'Do not evaporate or add more fresh water for the sake of lime: salinity would fall.',
      ],
      working: [...working, need],
    });
  }
  return answer({
    ...common,
    headline: `Yes: ${mass(lime.limeG)} of calcium hydroxide a day, ${significant(lime.perLitreG, 2)} g per litre of top-off, covers ${shown('alkalinity', use.value)} a day in ${volume(tankL)}.`,
    facts: [
      ...facts,
      {
        label: 'Calcium with it',
        value: `${significant(calciumWithAlkalinity(use.value), 2)} mg/L a day, the ratio growth uses`,
      },
      {
        label: 'Or as saturated limewater',
        value: `${volume(lime.saturatedL)} of it with ${volume(lime.plainL)} of plain fresh water`,
      },
      {
        label: 'Strength',
        value: `${fixed(lime.ofSaturation * 100, 0)} % of saturation: full strength would overdose by ${shown('alkalinity', full.alkMeqL - use.value)} a day`,
      },
    ],
    steps: [
      'Start with less than computed, test alkalinity daily at the same hour, then adjust.',
      'Stop or lower other alkalinity and calcium dosing by as much.',
    ],
    working: [
      ...working,
      need,
      `${mass(lime.limeG)} / ${volume(litres.value)} = ${significant(lime.perLitreG, 2)} g per litre`,
    ],
  });
}
