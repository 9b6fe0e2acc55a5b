import { z } from 'zod';
import { NO_MEDICINE } from '../../core/care/urgent/people.ts';
import { Problem } from '../../core/problem.ts';
import { significant, volumeAsWritten } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { urgentAction } from '../urgent/action.ts';
import { askedWater } from './asked.ts';
import { labelAmount } from './label-amount.ts';
import { byLabelAdvice, labelled, type Labelled } from './label-advice.ts';
import { say } from '../../core/wording/say.ts';

export const labelCommand = defineCommand({
  path: ['dose', 'label'],
  summary: 'What a label comes to in your tank, and how to begin with less',
  example: '/dose label what:amino acids amount:2 mL per:100 L volume:75 gal',
  options: z.strictObject({
    what: z.enum(labelled).describe('What kind of thing it is'),
    amount: textOption('What the label says: 5 mL, 2 drops, 1 g').optional(),
    per: quantityOption('volume', 'For how much water, e.g. 100 L').optional(),
    volume: quantityOption('volume', 'Net water of the whole system', 'volume').optional(),
  }),
  run: ({ what, amount, per, volume }): Answer => {
    if (what === 'medicine') return noMedicine;
    if (amount === undefined && per === undefined) return byLabelAdvice(what);
    if (amount === undefined || per === undefined) {
      throw new Problem(say('dose.labelHasAmountWater'), {
        field: amount === undefined ? 'amount' : 'per',
        hint: say('dose.exampleAmount5Ml'),
      });
    }
    return byLabel(what, { amount, per, volume });
  },
});

interface Texts {
  readonly amount: string;
  readonly per: string;
  readonly volume: string | undefined;
}

/** More of the labelled water than this in one tank is a slip of the unit; own choice. */
const MOST_TIMES = 10_000;

function byLabel(what: Labelled, texts: Texts): Answer {
  const advice = byLabelAdvice(what);
  const water = askedWater(texts.volume);
  const { value: perL, written, unit, notes } = readQuantity('volume', texts.per, { field: 'per' });
  const label = labelAmount(texts.amount);
  const times = water.volumeL / perL;
  if (times > MOST_TIMES)
    throw new Problem(say('dose.labelTooLittleWater'), {
      field: 'per',
      given: texts.per,
    });
  const most = label.show(label.value * times);
  return answer({
    ...advice,
    headline: `The label comes to ${most} ${water.where}: that is the most, so begin with ${FIRST[what]} of it.`,
    read: [
      `the label as ${label.show(label.value)} for ${volumeAsWritten(perL, written, unit)}`,
      ...label.notes,
      ...notes,
      ...water.read,
    ],
    facts: [
      { label: 'to begin with', value: `${label.show(label.value * times * SHARE[what])} ${water.where}` },
    ],
    steps: ['How often, and how long, is what the label says; not oftener.', ...advice.steps],
    working: [
      `${label.show(label.value)} x ${significant(water.volumeL, 4)} L / ${significant(perL, 4)} L = ${most}`,
    ],
    sources: ['mixing', 'practice'],
  });
}

/** What to begin with, as a part of the label's amount. Common practice, no source. */
const SHARE: Readonly<Record<Labelled, number>> = {
  'carbon source': 0.25,
  'phosphate remover': 0.25,
  'iodine or traces': 0.25,
  'amino acids': 0.5,
  'salt or buffer': 0.5,
  medicine: 0,
};

const FIRST: Readonly<Record<Labelled, string>> = {
  'carbon source': 'a quarter',
  'phosphate remover': 'a quarter',
  'iodine or traces': 'a quarter',
  'amino acids': 'half',
  'salt or buffer': 'half',
  medicine: 'none',
};

const noMedicine = answer({
  headline: NO_MEDICINE,
  dangers: ['Not into the display: many medicines kill corals, shrimps and the filter.'],
  steps: ['Test salinity, temperature, ammonia and pH first: bad water looks like illness.'],
  sources: ['practice'],
  next: [urgentAction('copper or medicine')],
});
