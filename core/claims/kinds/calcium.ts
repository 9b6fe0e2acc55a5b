import { compounds } from '../../dosing/compound.ts';
import { amountG } from '../../dosing/dose.ts';
import { fixed, mass, significant, volume } from '../../quantity/format.ts';
import { CALCIUM_MG_PER_MEQ, meqLFromDkh } from '../../water/alkalinity.ts';
import { seawaterMgL } from '../../water/reference-seawater.ts';
import type { Judge } from '../claim.ts';
import { ratioToOne } from '../ratio.ts';
import { levelOf } from '../salts.ts';
import { has, is, tied } from '../stated.ts';
import { against, againstNumber } from '../verdict.ts';

/** "every 10 ppm Ca goes with 1 meq/L", "1 dKH uses 7 ppm calcium": what growth and limewater tie together. */
export const calciumWithAlk: Judge = (stated) => {
  const { amounts, salts, parameters, text } = stated;
  const alk = amounts.find((amount) => is(amount, 'alkalinity') && !is(amount, 'concentration'));
  const ca = amounts.find((amount) => amount !== alk && (is(amount, 'concentration') || is(amount, 'bare')));
  if (alk === undefined || ca === undefined || amounts.length !== 2) return undefined;
  if (salts.length > 0 || !parameters.includes('calcium')) return undefined;
  if (!has(stated, 'parts.uses', 'sums.ratio', 'events.wentDown') && !tied(stated, 0, text.length, 'per'))
    return undefined;
  const meqL = levelOf('alkalinity', alk);
  const caMgL = ca.value;
  if (!(meqL > 0 && meqL < 5 && caMgL > 0 && caMgL < 200)) return undefined;
  const real = meqL * CALCIUM_MG_PER_MEQ;
  const salt = compounds.find(({ formula }) => formula === 'CaCl2·2H2O');
  if (salt === undefined) throw new Error('no calcium chloride dihydrate');
  return {
    kind: 'calcium with alkalinity',
    rule: `${significant(caMgL, 4)} mg/L of calcium go with ${alk.text} of alkalinity`,
    verdict: againstNumber(caMgL, real),
    figure: `where coral skeleton forms, ${alk.text} goes with ${significant(real, 3)} mg/L of calcium: 20 per meq/L, 7.1 per dKH`,
    working: [
      `CaCO3 takes one Ca (40.078) and two equivalents: 40.078 / 2 = ${fixed(CALCIUM_MG_PER_MEQ, 2)} mg per meq`,
    ],
    following: (waterL) => {
      const perDkh = CALCIUM_MG_PER_MEQ * meqLFromDkh(1);
      const needG = amountG(salt, 'calcium', perDkh, waterL);
      const low = (needG * caMgL) / real;
      const drift = (caMgL / real - 1) * perDkh;
      return {
        words: `each dKH used in ${volume(waterL)} gets ${mass(low)} of ${salt.formula} for ${mass(needG)}${Math.abs(drift) < 0.1 ? '' : `: calcium drifts ${drift < 0 ? 'down' : 'up'} by ${significant(Math.abs(drift), 2)} mg/L`}`,
        low,
        high: low,
        unit: 'g',
      };
    },
    steps: [
      'Test both and dose each to its own reading; growth with magnesium in it takes slightly less calcium.',
    ],
    sources: ['iupac21', 'dkh'],
  };
};

/** "magnesium should be 3 times calcium": the ratio of seawater. */
export const magnesiumToCalcium: Judge = (stated) => {
  const { amounts, parameters } = stated;
  const [first] = amounts;
  const claimed =
    amounts.length === 1 && first !== undefined && is(first, 'times') ? first.value : ratioToOne(stated);
  if (!parameters.includes('magnesium') || !parameters.includes('calcium')) return undefined;
  if (claimed === undefined || !(claimed > 0.1 && claimed < 20)) return undefined;
  const [mg, ca] = [seawaterMgL('Mg', 35, 25), seawaterMgL('Ca', 35, 25)];
  const real = mg / ca;
  return {
    kind: 'magnesium to calcium',
    rule: `magnesium is ${claimed} times calcium`,
    verdict: againstNumber(claimed, real),
    figure: `seawater holds ${significant(real, 3)} times as much magnesium as calcium by weight; neither has to track the other exactly`,
    working: [`S 35, 25 °C: ${fixed(mg, 0)} / ${fixed(ca, 0)} mg/L = ${fixed(real, 2)}`],
    example: {
      words: `at calcium ${fixed(ca, 0)} the rule aims at magnesium ${fixed(claimed * ca, 0)} mg/L where seawater has ${fixed(mg, 0)}: ${against(claimed * ca, mg)}`,
      low: claimed * ca,
      high: claimed * ca,
      unit: 'mg/L',
    },
    sources: ['m08', 'fm83'],
  };
};
