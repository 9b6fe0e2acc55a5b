import { amountG } from '../../core/dosing/dose.ts';
import { solubility } from '../../core/dosing/solubility.ts';
import { solutionMl, strengthGL } from '../../core/dosing/solution.ts';
import type { Compound } from '../../core/dosing/compound.ts';
import { Problem } from '../../core/problem.ts';
import { fromUnit, significant } from '../../core/quantity/format.ts';
import {
  drawingStep,
  drawn,
  portions,
  portionWords,
  roundedDown,
  threeFigures,
} from '../../core/quantity/portion.ts';
import type { SourceCode } from '../../core/sources.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { say } from '../../core/wording/say.ts';

/** A stock solution: the powder asked for, or less where that much does not dissolve. */
export interface Stock {
  readonly gL: number;
  /** What does not fit, as a sentence; undefined where all of it dissolves. */
  readonly tooMuch: string | undefined;
  readonly limit: string;
  readonly source: SourceCode;
}

/** Behind a solubility that is not of a source at hand. */
export const HANDBOOK = ' (handbook value from memory)';

/** The strength a bottle can really have: what was weighed in, or the strongest that surely dissolves. */
export function stockOf(compound: Compound, massG: number, finalL: number): Stock {
  const asked = strengthGL(massG, finalL);
  const { mostGL, stockGL, tempC, source } = solubility(compound);
  const limit = `about ${figures(mostGL)} g per litre are sure to dissolve at ${tempC} °C${source === 'memory' ? HANDBOOK : ''}`;
  if (asked <= mostGL * (1 + 1e-9)) return { gL: asked, tooMuch: undefined, limit, source };
  const gL = roundedDown(stockGL, 10 * threeFigures(stockGL));
  return {
    gL,
    tooMuch: `${asked < MOST_SAID ? `${figures(asked)} g per litre` : 'That'} is more than dissolves`,
    limit,
    source,
  };
}

/** g/L: a heavier litre is no solution, and its number says nothing. */
const MOST_SAID = 5000;

/** @throws Problem for a strength that no solution of the compound can have. */
export function checkStrength(compound: Compound, gL: number, given: string): void {
  const { tooMuch, limit, gL: strongest } = stockOf(compound, gL, 1);
  if (tooMuch === undefined) return;
  throw new Problem(say('dose.noSolutionStrong', { name: compound.name, tooMuch }), {
    field: 'strength',
    given,
    limit,
    hint: say('dose.strongestKeepsAboutG', { figures: figures(strongest) }),
  });
}

/** More of a weak solution than this part of the tank is no dose but a water change. Own choice. */
const MOST_PART = 0.02;

/** "18.7 mL", with "37.4 mL a day for 2 days" where the rise is more than a day's pace. */
export interface DrawnDose {
  readonly all: string;
  readonly daily: string | undefined;
  /** Whether `all` is an amount, and not why there is none. */
  readonly isMeasured: boolean;
}

/** The millilitres of a solution for a rise (canonical) in `tankL`. */
export function doseOfStock(
  compound: Compound,
  id: ParameterId,
  rise: number,
  gL: number,
  purity: number,
  tankL: number,
): DrawnDose {
  const { kind, unit } = parameter(id);
  const { pace } = limitsOf(id);
  const ml = (by: number): number => solutionMl(amountG(compound, id, by, tankL, purity), gL);
  const most = pace === undefined ? ml(rise) : ml(fromUnit(kind, pace.up, unit));
  const plan = portions(ml(rise), most, drawingStep);
  if (plan === undefined)
    return { all: 'less than 0.01 mL (make it weaker)', daily: undefined, isMeasured: false };
  if (plan.each > tankL * 1000 * MOST_PART) {
    const share = `more than ${significant(MOST_PART * 100)} % of the tank a day (make it stronger)`;
    return { all: share, daily: undefined, isMeasured: false };
  }
  const show = (volumeMl: number): string => drawn(volumeMl, plan.step);
  return {
    all: show(plan.total),
    daily: plan.days === 1 ? undefined : portionWords(plan, show),
    isMeasured: true,
  };
}

function figures(gL: number): string {
  return significant(gL, 2);
}
