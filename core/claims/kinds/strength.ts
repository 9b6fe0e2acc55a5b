import { hazard } from '../../care/hazards.ts';
import { amountG, supplyPerG } from '../../dosing/dose.ts';
import { fixed, mass, significant, volume } from '../../quantity/format.ts';
import { parameter, type ParameterId } from '../../water/parameter.ts';
import type { Claim, Judge } from '../claim.ts';
import type { NamedSalt } from '../named-salts.ts';
import { canonical } from '../salts.ts';
import { has, is } from '../stated.ts';
import { against, againstNumber } from '../verdict.ts';

/** "soda ash is twice as strong as baking soda", "use half as much soda ash as baking soda". */
export const strength: Judge = (stated) => {
  const [a, b] = stated.salts;
  const [number, other] = stated.amounts;
  if (a === undefined || b === undefined || a.forms.length + b.forms.length > 2) return undefined;
  const id = a.forms[0].raises.find((each) => b.forms[0].raises.includes(each));
  if (id === undefined || other !== undefined) return undefined;
  const isAmount = has(stated, 'sums.asMuch', 'sums.fallBy');
  const isStrong = has(stated, 'sums.strength', 'sums.same', 'sums.weakness');
  if (!isAmount && !isStrong) return undefined;
  if (number !== undefined && !is(number, 'bare') && !is(number, 'times')) return undefined;
  const times = number?.value ?? 1;
  if (!(times > 0.05 && times < 20)) return undefined;
  const isLess = isAmount || has(stated, 'sums.weakness');
  return judged(a, b, id, isLess ? 1 / times : times);
};

function judged(a: NamedSalt, b: NamedSalt, id: ParameterId, claimed: number): Claim {
  const [left, right] = [a.forms[0], b.forms[0]];
  const real = supplyPerG(left, id) / supplyPerG(right, id);
  const { unit } = parameter(id);
  const step = id === 'alkalinity' ? 1 : 10;
  return {
    kind: 'strength of two salts',
    rule: `${left.name} is ${significant(claimed, 3)} times as strong as ${right.name}, gram for gram`,
    verdict: againstNumber(claimed, real),
    figure: `gram for gram ${left.name} is ${significant(real, 4)} times as strong: ${significant(1 / real, 3)} g of it equal 1 g of ${right.name}`,
    working: [
      ...[left, right].map(
        (c) =>
          `${c.formula}: ${significant(supplyPerG(c, id), 4)} ${id === 'alkalinity' ? 'meq' : 'mg'} per gram`,
      ),
      `${significant(supplyPerG(left, id), 4)} / ${significant(supplyPerG(right, id), 4)} = ${fixed(real, 3)}`,
    ],
    following: (waterL) => {
      const recipeG = amountG(right, id, canonical(id, step), waterL);
      const low = (step * real) / claimed;
      return {
        words: `for +${step} ${unit} in ${volume(waterL)} it puts in ${mass(recipeG / claimed)} for ${mass(recipeG)} of ${right.formula}: ${significant(low, 3)} ${unit}, ${against(low, step)}`,
        low,
        high: low,
        unit,
      };
    },
    steps: [`Weigh ${mass(100 / real)} of ${left.name} where a recipe says 100 g of ${right.name}.`],
    cautions:
      [left.hazard, right.hazard].includes('bicarbonate') && [left.hazard, right.hazard].includes('carbonate')
        ? [
            'The pH is not the same: soda ash lifts it, baking soda lowers it slightly at first. Half-baked powder lies between.',
          ]
        : [],
    dangers: hazard(left.hazard).dangers,
    sources: ['iupac21', ...(id === 'alkalinity' ? (['dsc07'] as const) : []), hazard(left.hazard).basis],
  };
}
