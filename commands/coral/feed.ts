import { z } from 'zod';
import { feedingAdds, type FeedingAdds, type Span } from '../../core/corals/feeding.ts';
import { mass, significant } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { askedWater } from '../dose/asked.ts';
import { quantityOption, textOption } from '../options.ts';
import { feedingLine, lightLine } from './about-lines.ts';
import { askedKind } from './asked-kind.ts';
import { shortFirst } from './short-first.ts';
import { askedFood, foodKinds } from './food-shares.ts';

export const feedCommand = defineCommand({
  path: ['coral', 'feed'],
  summary: 'The most a feeding adds: nitrate and phosphate, and what a coral eats',
  example: '/coral feed food:flake mass:1 g volume:200 L coral:duncan',
  options: z.strictObject({
    food: z.enum(foodKinds).describe('Kind of food; frozen is thawed and drained'),
    mass: quantityOption('mass', 'How much of it in one feeding, e.g. 2 g'),
    volume: quantityOption(
      'volume',
      'Net water of the system; per 100 L where not said',
      'volume',
    ).optional(),
    protein: quantityOption('share', 'Protein on the label, of the whole food, e.g. 48 %').optional(),
    phosphorus: quantityOption('share', 'Phosphorus on the label, of the whole food, e.g. 1 %').optional(),
    coral: textOption('Who is fed, for its feeding notes', { suggest: 'coral', max: 80 }).optional(),
  }),
  run: (input): Answer => {
    const water = askedWater(input.volume);
    const food = readQuantity('mass', input.mass, { field: 'mass' });
    const { shares, read } = askedFood(input.food, input.protein, input.phosphorus);
    const adds = feedingAdds(food.value, water.volumeL, shares);
    const coral = input.coral === undefined ? undefined : askedKind(input.coral);
    const lines = coral === undefined ? [] : [feedingLine(coral.entry), lightLine(coral.entry)];
    return answer({
      headline: `At most ${significant(adds.nitrateMgL.high, 3)} mg/L nitrate and ${significant(adds.phosphateMgL.high, 3)} mg/L phosphate from ${mass(food.value)} of ${input.food} food, ${water.where}: an upper bound with nothing taken out.`,
      read: [...(coral?.read ?? []), ...food.notes, ...read, ...water.read],
      facts: [...addsFacts(adds), weekFact(adds), ...shortFirst(lines)],
      steps: [
        'Feed what is taken within a few minutes, and lift out what is left.',
        'Test nitrate and phosphate before and a week after a change; go by the readings, not by this sum.',
      ],
      working: workingOf(food.value, water.volumeL, adds),
      cautions: [
        adds.doubt,
        NOT_THE_SAME,
        'Cutting food to nothing starves corals and fish: take nutrients out instead, by skimming, water changes or harvested algae.',
      ],
      sources: ['iupac21', 'practice', 'memory'],
      next: [action(say('coral.logNitrate'), 'log add', {}, ['readings'])],
    });
  },
});

function addsFacts({ nitrateMgL, phosphateMgL, nitrogenMg, phosphorusMg }: FeedingAdds) {
  return [
    { label: 'nitrate a feeding', value: `${spanWords(nitrateMgL)} mg/L` },
    { label: 'phosphate a feeding', value: `${spanWords(phosphateMgL)} mg/L` },
    {
      label: 'in the food',
      value: `${spanWords(nitrogenMg)} mg nitrogen, ${spanWords(phosphorusMg)} mg phosphorus`,
    },
  ];
}

function weekFact({ nitrateMgL, phosphateMgL }: FeedingAdds) {
  return {
    label: 'once a day for a week, at most',
    value: `${significant(nitrateMgL.high * 7, 3)} mg/L nitrate, ${significant(phosphateMgL.high * 7, 3)} mg/L phosphate`,
  };
}

const NOT_THE_SAME =
  'Plenty of food is not high nitrate: a coral said to like "high nutrients" wants food going by, not a high reading (common practice).';

function workingOf(
  grams: number,
  litres: number,
  { nitrateMgL, phosphateMgL }: FeedingAdds,
): readonly string[] {
  return [
    'nitrogen = protein / 6.25 (common practice); nitrate = nitrogen x 4.427, phosphate = phosphorus x 3.066 (atomic weights)',
    `${mass(grams)} in ${significant(litres, 4)} L: nitrate ${spanWords(nitrateMgL)} mg/L, phosphate ${spanWords(phosphateMgL)} mg/L`,
  ];
}

function spanWords({ low, high }: Span): string {
  const [from, to] = [significant(low, 3), significant(high, 3)];
  return from === to ? from : `${from} to ${to}`;
}
