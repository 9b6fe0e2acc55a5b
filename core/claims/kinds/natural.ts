import { drySaltGPerL } from '../../change/salt.ts';
import { fixed, significant, volume } from '../../quantity/format.ts';
import { readQuantity } from '../../quantity/read.ts';
import { parameter, type ParameterId } from '../../water/parameter.ts';
import { seawaterAlkMeqL, seawaterMgL, type SeawaterSpecies } from '../../water/reference-seawater.ts';
import { is } from '../../words/mention.ts';
import type { Recogniser } from '../claim.ts';
import { own } from '../salts.ts';
import { against, againstNumber } from '../verdict.ts';

const SEA = /\b(?:natural sea ?water|sea ?water|nsw|the sea|the ocean|ocean water|nature)\b/;
const HAS = /\b(?:is|has|holds|contains|at|about|around|sits)\b|=/;

const species: Partial<Record<ParameterId, SeawaterSpecies>> = {
  calcium: 'Ca',
  magnesium: 'Mg',
  potassium: 'K',
  strontium: 'Sr',
  bromide: 'Br',
};

/** "natural seawater has 420 ppm calcium", "the sea is at 7 dKH": reference seawater at S 35. */
export const naturalLevel: Recogniser = (heard) => {
  if (!SEA.test(heard.text) || !HAS.test(heard.text) || heard.mentions.length > 2) return undefined;
  const said = heard.said.find(({ parameter: id }) => id === 'alkalinity' || species[id] !== undefined);
  if (said === undefined) return undefined;
  const id = said.parameter;
  const kind = species[id];
  const { label, unit, decimals } = parameter(id);
  if (!is(said.mention, parameter(id).kind) && !is(said.mention, 'bare')) return undefined;
  const claimed = own(
    id,
    readQuantity(parameter(id).kind, said.mention.text, { field: 'rule', fallback: unit }).value,
  );
  const real = own(id, kind === undefined ? seawaterAlkMeqL(35, 25) : seawaterMgL(kind, 35, 25));
  if (claimed <= 0) return undefined;
  return {
    kind: 'level of the sea',
    rule: `seawater has ${significant(claimed, 4)} ${unit} of ${label}`,
    verdict: againstNumber(claimed, real),
    figure: `seawater of natural composition at 35 ppt has ${fixed(real, decimals)} ${unit} of ${label}; salt mixes are often richer`,
    working: ['reference composition of seawater, S 35, 25 °C, times its density'],
    following: (waterL) => ({
      words: `${volume(waterL)} of natural water at 35 ppt (${fixed((drySaltGPerL(35).asPpt * waterL) / 1000, 2)} kg of salt) has ${fixed(real, decimals)} ${unit}; the rule says ${significant(claimed, 4)}: ${against(claimed, real)}`,
      low: real,
      high: real,
      unit,
    }),
    sources: ['m08', 'fm83'],
  };
};
