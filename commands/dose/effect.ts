import { z } from 'zod';
import { handling, hazard } from '../../core/care/hazards.ts';
import { type Compound, compoundsFor } from '../../core/dosing/compound.ts';
import { riseFrom, supplyPerG } from '../../core/dosing/dose.ts';
import { fixed, mass, significant, span, volume } from '../../core/quantity/format.ts';
import { mostPossible } from '../../core/water/possible.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { type AskedAmount, askedAmount } from './asked-amount.ts';
import { askedCompound, askedParameter, askedPurity, askedWater, inOwnUnit, shown } from './asked.ts';
import { readLevel } from '../waterchange/level.ts';
import { alsoAdds } from './side-effects.ts';
import { supplyLine } from './working.ts';
import { limitsOf } from '../../core/water/limits.ts';

export const effectCommand = defineCommand({
  path: ['dose', 'effect'],
  summary: 'What an amount of a salt does to your water: checks a rule someone gave you',
  example: '/dose effect with:soda ash amount:20 g volume:568 L',
  options: z.strictObject({
    with: textOption('The salt, e.g. soda ash', { suggest: 'compound' }),
    amount: textOption('How much, e.g. 20 g; mL need a strength'),
    volume: quantityOption('volume', 'Net water of the whole system', 'volume').optional(),
    of: textOption('What to look at, if not what it is dosed for', { suggest: 'dosed' }).optional(),
    purity: quantityOption('share', 'Pure salt in the powder; pure if left out').optional(),
    now: textOption('What it reads before, e.g. 7.4 dKH: then where it ends').optional(),
    strength: textOption('Of a solution: grams of powder per litre, e.g. 80 g/L').optional(),
  }),
  run: (input): Answer => {
    const compound = askedCompound(input.with);
    const [first] = compound.forms;
    const id = input.of === undefined ? dosedFor(first) : askedParameter(input.of);
    const amount = askedAmount(input.amount, compound, input.strength);
    const water = askedWater(input.volume);
    const purity = askedPurity(input.purity);
    const rises = compound.forms.map((form) => riseRange(form, id, amount, water.volumeL, purity.share));
    const low = Math.min(...rises.map((rise) => rise.low));
    const high = Math.max(...rises.map((rise) => rise.high));
    const each =
      compound.forms.length > 1
        ? rises.map((rise) => ({ label: rise.form.name, value: riseSpan(id, rise.low, rise.high) }))
        : [];
    const read = [...amount.read, compound.read, purity.read, ...water.read];
    if (inOwnUnit(id, high) > mostPossible(id)) return tooMuch(id, amount.words, water.volumeL, read);
    const from = input.now === undefined ? undefined : readLevel(id, input.now, 'now');
    const adds = alsoAdds(first, id, amount.highG, water.volumeL, purity.share);
    return answer({
      headline: `${amount.words} of ${compound.label} raises ${parameter(id).label} by ${riseSpan(id, low, high)} in ${volume(water.volumeL)}${from === undefined ? '' : `, from ${shown(id, from)} to ${levelSpan(id, from + low, from + high)}`}.`,
      read,
      facts: [...each, ...(adds === undefined ? [] : [adds]), ...sameAs(first, id, amount)],
      steps:
        water.text !== undefined
          ? paceSteps(id, high)
          : ['Give your net volume to see whether it fits into a day.'],
      working: [
        supplyLine(first, id),
        `${mass(amount.lowG)} × ${significant(supplyPerG(first, id) * purity.share, 4)} ${id === 'alkalinity' ? 'meq' : 'mg'} per g / ${volume(water.volumeL)} = ${riseSpan(id, rises[0]?.low ?? low, rises[0]?.low ?? low)}`,
      ],
      dangers: handling(first.hazard).dangers,
      cautions: [...bakeLine(first), ...handling(first.hazard).cautions],
      sources: [
        'iupac21',
        ...(id === 'alkalinity' ? (['dkh'] as const) : []),
        'practice',
        hazard(first.hazard).basis,
      ],
    });
  },
});

/** More than any water of a tank holds: the amount or the volume is a slip. */
function tooMuch(id: ParameterId, words: string, volumeL: number, read: readonly string[]): Answer {
  const { label, unit } = parameter(id);
  return answer({
    headline: `Do not add this: ${words} in ${volume(volumeL)} would raise ${label} by more than ${mostPossible(id)} ${unit}, beyond anything a tank holds.`,
    read,
    steps: ['Do not add this. Look at the amount and its unit, and at the volume, and ask again.'],
    sources: ['practice'],
  });
}

/** Beyond this many days' pace an amount is a mistake. */
const MOST_DAYS = 14;

function dosedFor({ raises, name }: Compound): ParameterId {
  const [id] = raises;
  if (id === undefined) throw new Error(`${name} is dosed for nothing`);
  return id;
}

function riseRange(form: Compound, id: ParameterId, amount: AskedAmount, volumeL: number, purity: number) {
  const rise = (grams: number): number => riseFrom(form, id, grams, volumeL, purity);
  return { form, low: rise(amount.lowG), high: rise(amount.highG) };
}

/** "1.8 dKH", or "3.5 to 7.1 dKH" where it is a range. */
function riseSpan(id: ParameterId, low: number, high: number): string {
  if (high - low <= low * 1e-6) return shown(id, low);
  return `${span(significant(inOwnUnit(id, low), 2), significant(inOwnUnit(id, high), 2))} ${parameter(id).unit}`;
}

/** "9.7 to 10.3 dKH", with the digits a kit shows. */
function levelSpan(id: ParameterId, low: number, high: number): string {
  const { unit, decimals } = parameter(id);
  const [from, to] = [low, high].map((level) => fixed(inOwnUnit(id, level), decimals));
  return `${from === to ? (from ?? '') : span(from ?? '', to ?? '')} ${unit}`;
}

function paceSteps(id: ParameterId, rise: number): readonly string[] {
  const { label, unit } = parameter(id);
  const { pace } = limitsOf(id);
  if (pace === undefined) return [];
  const days = Math.ceil(inOwnUnit(id, rise) / pace.up - 1e-9);
  const rule = `${label} is moved at most ${pace.up} ${unit} a day`;
  if (days > MOST_DAYS) return [`Do not add this: ${rule}. Check the amount and the volume.`];
  if (days <= 1) return [`Within a day’s pace: ${rule}. Dissolve it, add it slowly, retest.`];
  return [
    `Not in one day: ${rule}, so spread it over ${days} days or more.`,
    'An amount that suits one tank does not suit another: work from your own reading, goal and net volume.',
  ];
}

/** The same alkalinity from the other sodium salt: grams, and grams per gram. */
function sameAs(form: Compound, id: ParameterId, { lowG, highG }: AskedAmount): readonly Fact[] {
  if (lowG !== highG) return [];
  const others = compoundsFor(id).filter(
    (other) => other !== form && other.hazard !== 'lime' && other.water === form.water,
  );
  return others.map((other) => {
    const ratio = supplyPerG(form, id) / supplyPerG(other, id);
    return {
      label: `Same from ${other.name}`,
      value: `${mass(lowG * ratio)} (${significant(ratio, 3)} g for each g of ${form.name})`,
    };
  });
}

/** Soda ash is not twice as strong by weight; said with either of the two. */
function bakeLine(form: Compound): readonly string[] {
  const pair = compoundsFor('alkalinity').filter(
    ({ hazard: id, water }) => (id === 'bicarbonate' || id === 'carbonate') && water === 0,
  );
  const [bicarbonate, carbonate] = pair;
  if (!pair.includes(form) || bicarbonate === undefined || carbonate === undefined) return [];
  const ratio = supplyPerG(bicarbonate, 'alkalinity') / supplyPerG(carbonate, 'alkalinity');
  return [
    `By weight 1 g of ${bicarbonate.name} equals ${significant(ratio, 3)} g of ${carbonate.name}, not half: half falls ${fixed((1 - 0.5 / ratio) * 100, 0)} % short. Baking drives off CO2 and water; half-baked powder lies between. Sodium carbonate lifts pH, bicarbonate lowers it slightly at first.`,
  ];
}
