import { hazard } from '../../care/hazards.ts';
import { amountG, supplyPerG } from '../../dosing/dose.ts';
import { compoundMolarMass } from '../../dosing/compound.ts';
import { fixed, mass, volume } from '../../quantity/format.ts';
import { meqLFromDkh } from '../../water/alkalinity.ts';
import { afterAddition, alkUmolKgFromMeqL, fromAlkalinityAndPh } from '../../water/carbonate.ts';
import { ph } from '../../water/ph-scale.ts';
import type { Judge, Verdict } from '../claim.ts';
import { has, type Stated } from '../stated.ts';

/** The water the change is worked out in: an ordinary reef tank by day, pH on the total scale. Own choice. */
const WATER = { practicalSalinity: 35, tempC: 25 } as const;
const START = { dkh: 8, ph: 8.1 } as const;
/** Below this a pH change is none: what a hobby probe can tell. Common practice, no source. */
const NONE = 0.03;
/** Below this nobody need care: own choice. */
const SMALL = 0.1;

/** "baking soda raises pH": what 1 dKH of a salt does to pH before gas is exchanged. */
export const phOfSalt: Judge = (stated) => {
  const [salt, other] = stated.salts;
  const claimed = stated.parameters.includes('ph') ? directionSaid(stated) : undefined;
  if (salt === undefined || other !== undefined || claimed === undefined || stated.amounts.length > 0)
    return undefined;
  const form = salt.forms[0];
  if (form.alkEqPerMol === 0 || !form.raises.includes('alkalinity')) return undefined;
  const before = fromAlkalinityAndPh(
    alkUmolKgFromMeqL(meqLFromDkh(START.dkh), WATER),
    ph('total', START.ph),
    WATER,
  );
  const alk = alkUmolKgFromMeqL(meqLFromDkh(1), WATER);
  const after = afterAddition(before, alk, (alk * form.dicPerMol) / form.alkEqPerMol);
  const change = after.phTotal - before.phTotal;
  const real = Math.abs(change) < NONE ? 0 : Math.sign(change);
  const small = claimed === 0 && Math.abs(change) < SMALL;
  const verdict: Verdict = claimed === real ? 'right' : small ? 'roughly right' : 'wrong';
  const did = `${fixed(Math.abs(change), 2)} ${change < 0 ? 'down' : 'up'}`;
  return {
    kind: 'pH of a salt',
    rule: `${form.name} ${claimed === 0 ? 'leaves pH alone' : claimed > 0 ? 'raises pH' : 'lowers pH'}`,
    verdict,
    figure: `1 dKH of ${form.name} moves pH ${did} at first, from ${fixed(START.ph, 2)} to ${fixed(after.phTotal, 2)}`,
    besides: 'over hours the air of the room takes it back part of the way',
    working: [
      `${form.formula} adds ${form.alkEqPerMol} alkalinity and ${form.dicPerMol} carbon per mol (${fixed(compoundMolarMass(form), 1)} g); S 35, 25 °C, ${START.dkh} dKH, total scale`,
    ],
    following: (waterL) => ({
      words: `${mass(amountG(form, 'alkalinity', meqLFromDkh(1), waterL))} in ${volume(waterL)}, +1 dKH (${fixed(supplyPerG(form, 'alkalinity'), 1)} meq per gram), moves pH by ${did} at first`,
      low: change,
      high: change,
      unit: 'pH',
    }),
    steps: ['Do not dose for pH. Fresh air in the room moves it more and harms nothing.'],
    dangers: hazard(form.hazard).dangers,
    sources: ['dsc07', 'lueker00', 'iupac21', hazard(form.hazard).basis],
  };
};

/** 1 for up, -1 for down, 0 for neither. */
function directionSaid(stated: Stated): -1 | 0 | 1 | undefined {
  const isUp = has(stated, 'manner.rise', 'sums.riseBy', 'events.wentUp');
  const isDown = has(stated, 'manner.lower', 'sums.fallBy', 'events.wentDown');
  if (has(stated, 'manner.negation')) return isUp || isDown || has(stated, 'parts.change') ? 0 : undefined;
  if (isUp === isDown) return undefined;
  return isUp ? 1 : -1;
}
