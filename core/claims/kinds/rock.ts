import { fixed, mass, significant, volume } from '../../quantity/format.ts';
import { rockL } from '../../tank/displaced.ts';
import type { Judge } from '../claim.ts';
import { litresOf, printed, printedBase, weighedG } from '../salts.ts';
import { has, is, type Stated } from '../stated.ts';

const isRock = (stated: Stated): boolean =>
  has(stated, 'places.rock', 'places.sand', 'places.sandBed', 'substances.rockAndSand');

/** "take 10 % off for rock": true of no tank in particular. */
export const rockShare: Judge = (stated) => {
  const [share, other] = stated.amounts;
  if (share === undefined || other !== undefined || !is(share, 'share') || !isRock(stated)) return undefined;
  const percent = share.value;
  if (!has(stated, 'sums.fallBy', 'sums.volume') || !(percent > 0 && percent < 60)) return undefined;
  return {
    kind: 'share of rock',
    rule: `net water is the tank less ${percent} % for rock and sand`,
    verdict: 'depends',
    figure: 'rock and sand take 5 to 30 % of the glass and differ in every tank (common practice)',
    besides: 'the water line and a sump change it again: count the litres when you fill it',
    working: ['a kilogram of reef rock pushes aside 0.37 to 0.45 L (common practice)'],
    following: (waterL) => {
      const low = (percent / (100 - percent)) * waterL;
      return {
        words: `${volume(waterL)} of net water supposes ${volume(low)} of rock and sand, about ${fixed(low / rockL(1000).likely, 0)} kg of rock`,
        low,
        high: low,
        unit: 'L',
      };
    },
    steps: ['/tank new works it out from the glass, the rock and the sand, or from a measured dose.'],
    sources: ['practice', 'geometry'],
  };
};

/** "a pound of live rock per gallon". */
export const rockByVolume: Judge = (stated) => {
  const [weight, base, other] = stated.amounts;
  if (weight === undefined || base === undefined || other !== undefined || !isRock(stated)) return undefined;
  if (!is(weight, 'mass') || !is(base, 'volume') || stated.salts.length > 0) return undefined;
  const gPerL = weighedG(weight) / litresOf(base);
  if (!(gPerL > 0 && gPerL < 2000)) return undefined;
  return {
    kind: 'rock by volume',
    rule: `${printed(weight)} of rock per ${printedBase(base)}`,
    verdict: 'depends',
    figure: 'no figure is published: how porous the rock is counts for more than its weight',
    besides: 'much rock leaves little room for water and flow',
    working: [
      `${significant(gPerL, 3)} g of rock for each litre; 1 kg pushes aside 0.37 to 0.45 L (common practice)`,
    ],
    following: (waterL) => {
      const { low, high } = rockL(gPerL * waterL);
      return {
        words: `${volume(waterL)} would hold ${mass(gPerL * waterL)} of rock, which pushes aside ${volume(low)} to ${volume(high)} of water`,
        low,
        high,
        unit: 'L',
      };
    },
    sources: ['practice', 'memory'],
  };
};
