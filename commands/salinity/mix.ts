import { z } from 'zod';
import {
  baggedMixGPerL,
  drySaltGPerL,
  drySaltToAddG,
  freshWaterToAddKg,
  mixRange,
  salinityOfBaggedMix,
} from '../../core/change/salt.ts';
import { inRange } from '../../core/problem.ts';
import { fixed, mass, span, volume } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { definitionOf } from '../../core/quantity/unit.ts';
import { readSalinity } from '../../core/water/salinity-reading.ts';
import { densityKgM3 } from '../../core/water/seawater.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { askFirst, stillUnusual, sureOption, type PlannedLevel } from '../unusual.ts';
import { readWater, percent } from '../waterchange/pour.ts';
import { both, ppt, seawaterPpt, understood, UNPLUG } from './print.ts';
import { opened, type Opening } from '../short/remark-first.ts';

export const mixCommand = defineCommand({
  path: ['salinity', 'mix'],
  summary: 'How much salt mix a batch of salt water needs, and how to correct it',
  example: '/salinity mix volume:30 gal goal:35 ppt amount:15 cups',
  options: z.strictObject({
    volume: quantityOption('volume', 'Volume of the batch, e.g. 30 gal'),
    goal: textOption('Salinity you want; 35 ppt if left out').optional(),
    label: quantityOption('concentration', 'Grams of this mix in a litre at 35 ppt, by its label').optional(),
    amount: textOption('Salt mix you meant to use, to check it: 4 kg or 15 cups').optional(),
    scoop: quantityOption('mass', 'What one scoop of it weighs, to count it in scoops: 150 g').optional(),
    parts: z.int().min(2).max(50).describe('Or weighed in so many equal parts').optional(),
    sure: sureOption(),
  }),
  run: (input): Answer => {
    const water = readWater(input.volume);
    const goal = readSalinity(input.goal ?? `${seawaterPpt} ppt`, { field: 'goal' });
    const s = inRange('goal', goal.practicalSalinity, mixRange.min, mixRange.max - 1, 'ppt');
    const again: PlannedLevel['again'] = (label, changed) =>
      action(label, 'salinity mix', { ...input, parts: input.parts?.toString(), ...changed });
    const asked = askFirst({ id: 'salinity', goal: s, sure: input.sure, again });
    if (asked !== undefined) return asked;
    const batch = water.volumeL;
    const bagged = baggedMixGPerL(s);
    const dry = drySaltGPerL(s);
    const planned =
      input.amount === undefined ? undefined : plannedSalt(input.amount, batch, bagged.low * batch);
    const labelled = input.label === undefined ? undefined : byLabel(input.label, s, batch);
    const whole = (gPerL: number): string => mass(gPerL * batch);
    const lowG = bagged.low * batch;
    const scoops = input.scoop === undefined ? undefined : inScoops(input.scoop, lowG);
    const isAsked = input.amount !== undefined && input.goal === undefined;
    const main = `Weigh in ${whole(bagged.low)} of salt mix for ${water.part(1)} at ${ppt(s)}.`;
    const unusual = stillUnusual({ id: 'salinity', goal: s }).trim();
    const parts: readonly (Opening | undefined)[] = [
      ...(labelled === undefined ? [] : [{ value: labelled }]),
      { label: 'else', value: main },
      planned && { value: planned.sentence, ...(isAsked ? { isBefore: true } : {}) },
      scoops && { value: scoops.sentence },
      unusual === '' ? undefined : { label: 'the goal', value: unusual, isBefore: true },
    ];
    const given = answer({
      headline: '',
      read: [
        `finished batch ${water.part(1)}`,
        ...water.read.slice(1),
        ...(input.goal === undefined ? ['no goal given, so 35 ppt'] : understood('goal', goal)),
      ],
      facts: [
        ...(planned?.facts ?? []),
        ...(scoops?.facts ?? []),
        ...(input.parts === undefined
          ? []
          : [{ label: `in ${input.parts} equal parts`, value: `${mass(lowG / input.parts)} each` }]),
        {
          label: 'salt mix from the bag, with its moisture',
          value: `${fixed(bagged.low, 1)} to ${fixed(bagged.high, 1)} g per litre, ${whole(bagged.low)} to ${whole(bagged.high)}`,
        },
        { label: 'each 1 ppt too low', value: `${mass(batch)} more (1 g per litre)` },
        {
          label: 'each 1 ppt too high',
          value: `${water.part(tooHigh(s))} more fresh water (${percent(tooHigh(s))})`,
        },
        { label: 'dry sea salts', value: `${dryRange(dry)} g per litre, ${whole(dry.asPpt)} in all` },
      ],
      steps: [
        'Weigh the salt; do not measure it in cups. The label of the mix comes first where it names a mass.',
        'Start with the lower amount in fresh (RO) water in a bin of its own, never in a tank with animals.',
        'Mix with a pump, warm, until clear; the label says how long.',
        `Measure with an instrument checked on a 35 ppt standard: ${both(s, goal.pair)} is the goal.`,
        'Note the grams per litre this bag took, and stir the bag before each batch: it settles.',
      ],
      working: [
        `dry salt = ppt x density = ${fixed(s, 1)} g/kg x ${fixed(densityKgM3(s, 25) / 1000, 4)} kg/L = ${fixed(dry.asPpt, 1)} g/L; by the reference scale (35 ppt is 35.165 g/kg) ${fixed(dry.reference, 1)} g/L`,
        `1 ppt too low: the full sum is ${fixed(perPpt(s), 2)} g of dry salt per litre; 1 g is the cautious first step`,
        `1 ppt too high: (S + 1)/S - 1 = ${percent(tooHigh(s))}`,
      ],
      dangers: ['Salt dust irritates eyes and airways: pour gently.', UNPLUG],
      sources: ['fm83', 'm08', 'practice'],
    });
    return opened(parts, given);
  },
});

function dryRange({ asPpt, reference }: { asPpt: number; reference: number }): string {
  return span(fixed(asPpt, 1), fixed(reference, 1));
}

/** Fresh water to add to a batch 1 ppt above `s`, as a part of its volume. */
function tooHigh(s: number): number {
  return freshWaterToAddKg(1, s + 1, s);
}

/** Dry salt (g) that raises a litre from 1 ppt below `s`. */
function perPpt(s: number): number {
  return drySaltToAddG(densityKgM3(s - 1, 25) / 1000, s - 1, s);
}

/** Grams in a litre that somebody may mean to mix; more or less is what is in store. Own choice. */
const MOST_GL = 45;
const LEAST_GL = 2;

/** The label of the mix comes before any usual figure; it is for 35 ppt, and other goals take in proportion. */
function byLabel(text: string, s: number, batchL: number): string {
  const gL = inRange(
    'label',
    readQuantity('concentration', text, { field: 'label' }).value / 1000,
    20,
    60,
    'g/L',
  );
  const part = s / seawaterPpt;
  const scaled = Math.abs(part - 1) < 1e-6 ? '' : ` at 35 ppt, so ${fixed(gL * part, 1)} for this`;
  return `By its label (${fixed(gL, 1)} g per litre${scaled}): ${mass(gL * part * batchL)}.`;
}

/** More batches than this are not counted. Own choice. */
const MANY = 1000;

/** Rounded down: a batch that is begun is none. */
function batches(times: number): string {
  if (times >= MANY) return `more than ${MANY}`;
  return times < 100 ? fixed(Math.floor(times * 10 + 1e-9) / 10, 1) : fixed(Math.floor(times), 0);
}

/** A bag, or what is left of one: how many batches it makes, or how many of it the batch takes. */
function inStore(grams: number, neededG: number, batchL: number): Planned {
  const times = grams / neededG;
  const value =
    times >= 1
      ? `enough for ${batches(times)} such batches`
      : `the batch takes ${times <= 1 / MANY ? `more than ${MANY}` : fixed(Math.ceil(1 / times - 1e-9), 0)} of it; one makes ${volume(batchL * times)}`;
  return {
    sentence: `${mass(grams)} is ${times >= 1 ? value : `too little: ${value}`}.`,
    facts: [{ label: mass(grams), value }],
  };
}

interface Planned {
  readonly sentence: string;
  readonly facts: readonly Fact[];
}

/** The salt counted in scoops of a weight that was told. Check: 887 g in scoops of 150 g -> 5.9. */
function inScoops(text: string, neededG: number): Planned {
  const grams = readQuantity('mass', text, { field: 'scoop' }).value;
  const count = fixed(neededG / inRange('scoop', grams, 1, 5000, 'g'), 1);
  return {
    sentence: `That is ${count} scoops of ${mass(grams)}.`,
    facts: [{ label: `scoops of ${mass(grams)}`, value: count, verdict: 'weigh one of this bag first' }],
  };
}

/** What the amount a member meant to use comes to: a mass as a salinity, cups as the mass one would have to hold. */
function plannedSalt(text: string, batchL: number, neededG: number): Planned {
  const cup = definitionOf('volume').units.find((unit) => unit.symbol === 'US cup');
  if (cup !== undefined && /\bcups?\b/i.test(text)) {
    const cups = readQuantity('volume', text, { field: 'amount' }).value / cup.factor;
    const grams = mass(neededG / cups);
    return {
      sentence: `${fixed(cups, 2)} cups are right only if one cup of this mix weighs about ${grams}.`,
      facts: [
        {
          label: `${fixed(cups, 2)} cups`,
          value: `right only at ${grams} a cup; cups vary 10 to 15 % (common practice)`,
          verdict: 'weigh it',
        },
      ],
    };
  }
  const grams = readQuantity('mass', text, { field: 'amount' }).value;
  if (grams / batchL > MOST_GL || grams / batchL < LEAST_GL) return inStore(grams, neededG, batchL);
  const { low, high } = salinityOfBaggedMix(grams / batchL);
  const value = span(ppt(low), ppt(high));
  return {
    sentence: `${mass(grams)} would come out at about ${value}.`,
    facts: [{ label: mass(grams), value }],
  };
}
