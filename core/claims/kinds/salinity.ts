import { drySaltGPerL } from '../../change/salt.ts';
import { mass, significant, volume } from '../../quantity/format.ts';
import { conductivityMScm, salinityFromConductivity } from '../../water/conductivity.ts';
import {
  gravityPairs,
  salinityFromSpecificGravity,
  specificGravity,
  type GravityPair,
} from '../../water/specific-gravity.ts';
import { readQuantity } from '../../quantity/read.ts';
import type { Following, Judge, Verdict } from '../claim.ts';
import { has, is, type Amount } from '../stated.ts';

const isPpt = (amount: Amount): boolean => is(amount, 'salinity') && !is(amount, 'gravity');

/** How far apart two salinities are for a keeper: half a ppt cannot be told, one ppt is the error of a cheap tool. Own choice. */
function byPpt(claimed: number, right: number): Verdict {
  const off = Math.abs(claimed - right);
  if (off <= 0.5) return 'right';
  return off <= 1 ? 'roughly right' : 'wrong';
}

/** What a tank really holds where the rule sets it, and the salt it is short of or has too much. */
function setBy(realS: number, meantS: number): (waterL: number) => Following {
  return (waterL) => {
    const missing = (drySaltGPerL(meantS).asPpt - drySaltGPerL(realS).asPpt) * waterL;
    const off =
      Math.abs(missing) < 0.005 * waterL
        ? 'as meant'
        : `${mass(Math.abs(missing))} of salt too ${missing > 0 ? 'little' : 'much'} for ${significant(meantS, 3)}`;
    return {
      words: `${volume(waterL)} set by it holds ${significant(realS, 3)} ppt: ${off}`,
      low: realS,
      high: realS,
      unit: 'ppt',
    };
  };
}

/** "1.025 is 35 ppt", in either order. */
export const gravityAsPpt: Judge = ({ amounts }) => {
  const sg = amounts.find((amount) => is(amount, 'gravity'))?.value;
  const ppt = amounts.find(isPpt)?.value;
  if (amounts.filter((amount) => !is(amount, 'temperature')).length !== 2) return undefined;
  if (sg === undefined || ppt === undefined || sg <= 1.003 || sg > 1.031 || ppt < 4 || ppt > 42)
    return undefined;
  const pairs = Object.keys(gravityPairs) as GravityPair[];
  const by = (pair: GravityPair): number => salinityFromSpecificGravity(sg, pair);
  const real = by('25/25');
  return {
    kind: 'gravity and ppt',
    rule: `a specific gravity of ${sg} is ${ppt} ppt`,
    verdict: byPpt(ppt, real),
    figure: `${sg} is ${significant(real, 3)} ppt on the 25 °C scale, and ${significant(ppt, 3)} ppt is ${significant(specificGravity(ppt, '25/25'), 5)}; scales of 20 °C and 60 °F read a little lower`,
    working: pairs.map((pair) => `${gravityPairs[pair].name}: ${significant(by(pair), 3)} ppt`),
    following: setBy(real, ppt),
    steps: ['See which temperature your instrument is made for, and check it on a 35 ppt standard.'],
    sources: ['fm83'],
  };
};

/** "45 mS is 35 ppt": right at one temperature only. */
export const conductivityAsPpt: Judge = (stated) => {
  const { amounts } = stated;
  const measured = amounts.find((amount) => is(amount, 'conductivity'));
  const ppt = amounts.find((amount) => isPpt(amount) && amount.value > 2);
  if (measured === undefined || ppt === undefined) return undefined;
  // A reading of one's own instrument is no rule.
  if (has(stated, 'gear.probe', 'hardware.salinityMeter')) return undefined;
  const mScm = readQuantity('conductivity', measured.text, { field: 'rule' }).value;
  const given = amounts.find((amount) => is(amount, 'temperature'));
  const tempC = given === undefined ? 25 : readQuantity('temperature', given.text, { field: 'rule' }).value;
  const real = salinityFromConductivity(mScm, tempC);
  const at = (t: number): string =>
    `${significant(t, 3)} °C: ${significant(salinityFromConductivity(mScm, t), 3)} ppt`;
  return {
    kind: 'conductivity and ppt',
    rule: `${significant(mScm, 4)} mS/cm is ${significant(ppt.value, 3)} ppt${given === undefined ? '' : ` at ${given.text}`}`,
    verdict: byPpt(ppt.value, real),
    figure: `${significant(mScm, 4)} mS/cm is ${significant(real, 3)} ppt at ${significant(tempC, 3)} °C, and ${significant(ppt.value, 3)} ppt reads ${significant(conductivityMScm(ppt.value, tempC), 3)} mS/cm there; most probes show it as at 25 °C`,
    working: [
      `same reading, other water: ${[20, 25]
        .filter((t) => t !== tempC)
        .map(at)
        .join(', ')}`,
    ],
    following: setBy(real, ppt.value),
    steps: ['Find out whether your probe corrects for temperature, and check it on a 53 mS/cm standard.'],
    sources: ['fm83', 'cs80'],
  };
};

/** "0.001 SG is 1 ppt": the size of a step on the scale. */
export const gravityStep: Judge = ({ amounts }) => {
  const ppt = amounts.find(isPpt)?.value;
  const step = amounts.find((amount) => is(amount, 'gravity') || is(amount, 'bare'))?.value;
  if (amounts.length !== 2) return undefined;
  if (step === undefined || ppt === undefined || !(step > 0.0001 && step < 0.01) || !(ppt > 0 && ppt < 20))
    return undefined;
  const real = (1000 * step) / (1000 * (specificGravity(35.5, '25/25') - specificGravity(34.5, '25/25')));
  const off = Math.abs(ppt / real - 1);
  return {
    kind: 'step of gravity',
    rule: `${step} of specific gravity is ${ppt} ppt`,
    verdict: off <= 0.025 ? 'right' : off <= 0.12 ? 'roughly right' : 'wrong',
    figure: `near 35 ppt a step of ${step} is ${significant(real, 3)} ppt, and 1 ppt is ${significant(step / real, 2)} SG`,
    working: [
      `SG at 34.5 and 35.5 ppt (25 °C / 25 °C): ${significant(specificGravity(34.5, '25/25'), 6)}, ${significant(specificGravity(35.5, '25/25'), 6)}`,
    ],
    following: setBy(35 - real, 35 - ppt),
    sources: ['fm83'],
  };
};
