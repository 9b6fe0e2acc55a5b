import { inRange, Problem } from '../problem.ts';
import { significant } from '../quantity/format.ts';
import { calciumWithAlkalinity } from '../water/alkalinity.ts';
import { say } from '../wording/say.ts';
import { compounds, compoundMolarMass } from './compound.ts';

/**
 * Solubility of calcium hydroxide in pure water, g per litre at deg C: Lange's Handbook of Chemistry, from memory; the
 * highest of the values met. Doubt: another table seen, without an author, has 1.850, 1.647 and 1.399 at 0, 20 and 40.
 */
const handbook: readonly (readonly [tempC: number, gL: number])[] = [
  [0, 1.8897],
  [10, 1.8195],
  [20, 1.7269],
  [30, 1.593],
  [40, 1.399],
];
/** Bates et al. 1956 at 25 deg C: 0.0203 mol/L, the best single measurement and the lowest. */
const BATES = { tempC: 25, molL: 0.0203 } as const;

/** g/mol; 74.092. */
const LIME_G_PER_MOL = limeMolarMass();

function limeMolarMass(): number {
  const lime = compounds.find(({ formula }) => formula === 'Ca(OH)2');
  if (lime === undefined) throw new Error('no calcium hydroxide among the compounds');
  return compoundMolarMass(lime);
}

/** g of calcium hydroxide per meq of alkalinity: 2 eq per mol. = 0.037046. */
export const LIME_G_PER_MEQ = LIME_G_PER_MOL / 2000;

/** The strength of saturated limewater in g of Ca(OH)2 per litre: `low` is used for sums, `high` is the other end. */
export interface Strength {
  readonly low: number;
  readonly high: number;
}

/**
 * How much calcium hydroxide a litre of clear limewater can hold, g/L, as a band.
 *
 * `tempC` 0 to 40. Low: bates56 at 25 deg C (0.0203 mol/L = 1.504 g/L), carried to other temperatures along the
 * handbook series; high: that series, from memory. It falls as the water warms. Check: 25 deg C -> 1.504 to about 1.66;
 * 20 deg C -> 1.565 to 1.727. Doubt: the two differ by 10 % at 25 deg C; limewater in an open vessel weakens day by day
 * as air turns it to chalk.
 *
 * @throws Problem outside the range.
 */
export function saturationGL(tempC = 25): Strength {
  inRange('temperature', tempC, 0, 40, '°C');
  const bates = BATES.molL * LIME_G_PER_MOL;
  const high = handbookGL(tempC);
  return { low: (bates * high) / handbookGL(BATES.tempC), high };
}

/** Straight line between neighbouring rows; `tempC` within the table. */
function handbookGL(tempC: number): number {
  for (const [index, [upperC, upper]] of handbook.entries()) {
    const [lowerC, lower] = handbook[index - 1] ?? [upperC, upper];
    if (tempC <= upperC)
      return upperC === lowerC ? upper : lower + ((upper - lower) * (tempC - lowerC)) / (upperC - lowerC);
  }
  throw new Error(`${tempC} is beyond the table`);
}

/** What a volume of limewater brings to a tank in a day. */
export interface Capacity {
  readonly meq: number;
  readonly alkMeqL: number;
  readonly calciumMgL: number;
}

/**
 * What `limewaterL` litres of limewater holding `gL` g of Ca(OH)2 per litre bring to `tankL` litres of water.
 *
 * Check [bates56]: 1 L at 1.5041 g/L into 100 L -> 0.406 meq/L (1.138 dKH) and 8.14 mg/L Ca.
 */
export function capacity(limewaterL: number, gL: number, tankL: number): Capacity {
  const meq = (inRange('amount', limewaterL, 0, 1e5, 'L') * gL) / LIME_G_PER_MEQ;
  const alkMeqL = meq / inRange('volume', tankL, 0.01, 1e6, 'L');
  return { meq, alkMeqL, calciumMgL: calciumWithAlkalinity(alkMeqL) };
}

/** Most of a tank's water that is topped off in a day, %: evaporation takes 1 to 3 (common practice, no source). */
const TOP_OFF_PERCENT = 10;

/** @throws Problem for more top-off a day than evaporates anywhere: the rest would thin the tank. */
export function checkedTopOff(topOffL: number, tankL: number): number {
  const percent = (topOffL / inRange('volume', tankL, 0.01, 1e6, 'L')) * 100;
  if (percent <= TOP_OFF_PERCENT) return topOffL;
  throw new Problem(
    percent > 100 ? say('dose.noTopOffWhole') : say('dose.noTopOffShare', { percent: significant(percent) }),
    {
      field: 'amount',
      given: `${significant(topOffL)} L`,
      limit: say('dose.topOffLimit', { percent: String(TOP_OFF_PERCENT) }),
      hint: say('dose.hintTopOff'),
    },
  );
}

/** Most alkalinity a tank uses in a day, meq/L: 5.6 dKH, more than the fastest growth. Own choice. */
const MOST_USE_MEQ_L = 2;

/** How to cover a daily use with lime in the top-off. */
export interface Recipe {
  readonly needMeq: number;
  readonly limeG: number;
  /** g of lime per litre of top-off. */
  readonly perLitreG: number;
  /** Share of saturation this is; above 1 the top-off cannot carry it. */
  readonly ofSaturation: number;
  /** Litres of saturated limewater and of plain water that make the same. */
  readonly saturatedL: number;
  readonly plainL: number;
}

/**
 * Lime for a use of `useMeqL` a day in `tankL` litres with `topOffL` litres of top-off a day, at saturation `gL`.
 *
 * Check (0.6 dKH a day, 340.7 L, 3.785 L): 72.9 meq, 2.70 g, 0.71 g per litre; 1.8 L saturated + 2.0 L plain.
 */
export function recipe(useMeqL: number, tankL: number, topOffL: number, gL: number): Recipe {
  const needMeq =
    inRange('goal', useMeqL, 0, MOST_USE_MEQ_L, 'meq/L a day') * inRange('volume', tankL, 0.01, 1e6, 'L');
  const limeG = needMeq * LIME_G_PER_MEQ;
  const perLitreG = limeG / inRange('amount', checkedTopOff(topOffL, tankL), 0.00001, 1e5, 'L a day');
  const saturatedL = limeG / gL;
  return {
    needMeq,
    limeG,
    perLitreG,
    ofSaturation: perLitreG / gL,
    saturatedL,
    plainL: Math.max(0, topOffL - saturatedL),
  };
}
