import { fixed, mass, significant, volume } from '../../quantity/format.ts';
import { readQuantity } from '../../quantity/read.ts';
import { rockL } from '../../tank/displaced.ts';
import type { Recogniser } from '../claim.ts';
import { NUM } from '../rule-text.ts';

/** "take 10 % off for rock": true of no tank in particular. */
export const rockShare: Recogniser = ({ text }) => {
  const found = new RegExp(
    String.raw`\b(?:take|knock|subtract|minus|deduct|allow|remove)\s+(?:off\s+)?(?:about\s+)?${NUM}\s*%\s*(?:off\s+)?(?:for|because of|due to)\s+(?:the\s+|your\s+)?(?:live\s+)?(?:rocks?|rockwork|sand|displacement)`,
  ).exec(text);
  const percent = Number(found?.[1]);
  if (found === null || !(percent > 0 && percent < 60)) return undefined;
  return {
    kind: 'share of rock',
    rule: `net water is the tank less ${percent} % for rock and sand`,
    verdict: 'depends',
    figure:
      'rock and sand take 5 to 30 % of the glass and differ in every tank (common practice), and the water line and a sump change it again: count the litres when you fill it',
    working: ['a kilogram of reef rock pushes aside 0.37 to 0.45 L (common practice)'],
    following: (waterL) => {
      const low = (percent / (100 - percent)) * waterL;
      return {
        words: `for your ${volume(waterL)} of net water the rule supposes ${volume(low)} of rock and sand, about ${fixed(low / rockL(1000).likely, 0)} kg of rock`,
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
export const rockByVolume: Recogniser = ({ text }) => {
  const found = new RegExp(
    String.raw`${NUM}\s*(lbs?|pounds?|kg|kilos?)\s+(?:of\s+)?(?:live\s+|dry\s+)?rock\s+(?:per|for each|for every|\/)\s*1 (gal(?:lon)?|lit(?:er|re)|l)\b`,
  ).exec(text);
  if (found === null) return undefined;
  const gPerL =
    readQuantity('mass', `${found[1] ?? ''} ${found[2] ?? ''}`, { field: 'rule' }).value /
    readQuantity('volume', `1 ${found[3] ?? ''}`, { field: 'rule' }).value;
  if (!(gPerL > 0 && gPerL < 2000)) return undefined;
  return {
    kind: 'rock by volume',
    rule: `${found[1] ?? ''} ${found[2] ?? ''} of rock per ${found[3] ?? ''}`,
    verdict: 'depends',
    figure:
      'no figure is published: how porous the rock is counts for more than its weight, and much rock leaves little room for water and flow',
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
