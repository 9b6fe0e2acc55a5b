import { drySaltGPerL } from '../../change/salt.ts';
import { fixed, significant, volume } from '../../quantity/format.ts';
import { parameter, type ParameterId } from '../../water/parameter.ts';
import { seawaterAlkMeqL, seawaterMgL, type SeawaterSpecies } from '../../water/reference-seawater.ts';
import type { Judge } from '../claim.ts';
import { levelOf, own } from '../salts.ts';
import { has, is } from '../stated.ts';
import { against, againstNumber } from '../verdict.ts';

const species: Partial<Record<ParameterId, SeawaterSpecies>> = {
  calcium: 'Ca',
  magnesium: 'Mg',
  potassium: 'K',
  strontium: 'Sr',
  bromide: 'Br',
};

/** "natural seawater has 420 ppm calcium", "the sea is at 7 dKH": reference seawater at S 35. */
export const naturalLevel: Judge = (stated) => {
  const [level, other] = stated.amounts.filter((amount) => !is(amount, 'salinity'));
  const id = stated.parameters.find((each) => each === 'alkalinity' || species[each] !== undefined);
  if (level === undefined || other !== undefined || id === undefined) return undefined;
  if (!has(stated, 'substances.seaWater', 'places.wild') || stated.salts.length > 0) return undefined;
  const kind = species[id];
  const { label, unit, decimals } = parameter(id);
  if (!is(level, parameter(id).kind) && !is(level, 'bare')) return undefined;
  const claimed = own(id, levelOf(id, level));
  const real = own(id, kind === undefined ? seawaterAlkMeqL(35, 25) : seawaterMgL(kind, 35, 25));
  if (claimed <= 0) return undefined;
  return {
    kind: 'level of the sea',
    rule: `seawater has ${significant(claimed, 4)} ${unit} of ${label}`,
    verdict: againstNumber(claimed, real),
    figure: `seawater of natural composition at 35 ppt has ${fixed(real, decimals)} ${unit} of ${label}; salt mixes are often richer`,
    working: ['reference composition of seawater, S 35, 25 °C, times its density'],
    following: (waterL) => ({
      words: `${volume(waterL)} at 35 ppt (${fixed((drySaltGPerL(35).asPpt * waterL) / 1000, 2)} kg of salt) has ${fixed(real, decimals)} ${unit}; the rule says ${significant(claimed, 4)}: ${against(claimed, real)}`,
      low: real,
      high: real,
      unit,
    }),
    sources: ['m08', 'fm83'],
  };
};
