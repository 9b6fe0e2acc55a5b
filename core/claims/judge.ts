import { Problem } from '../problem.ts';
import { scan, type Scanned } from '../language/tokens.ts';
import type { Claim, Judge } from './claim.ts';
import { calciumWithAlk, magnesiumToCalcium } from './kinds/calcium.ts';
import { changeCuts, changeTakesTo, continuousAsBatch, settlesAt, sumOfChanges } from './kinds/changes.ts';
import { doseRule } from './kinds/dose.ts';
import { elementAsIon } from './kinds/element-as-ion.ts';
import { equalUnits, ppmAsMgL } from './kinds/equal-units.ts';
import { unitFactor } from './kinds/factors.ts';
import { paceRule, turnover } from './kinds/habits.ts';
import { dailyTotal, luxFactor, sameDailyLight, wattsPerVolume } from './kinds/light.ts';
import { limeByVolume, limeSafety } from './kinds/lime.ts';
import { naturalLevel } from './kinds/natural.ts';
import { foodAsNitrate, nitrateToPhosphate } from './kinds/nutrients.ts';
import { peroxideByVolume } from './kinds/peroxide.ts';
import { phOfSalt } from './kinds/ph.ts';
import { bakedYield, elementShare, spoonWeight } from './kinds/powder.ts';
import { rockByVolume, rockShare } from './kinds/rock.ts';
import { conductivityAsPpt, gravityAsPpt, gravityStep } from './kinds/salinity.ts';
import { salinityPace } from './kinds/salinity-pace.ts';
import { cupsOfSalt, saltPerLitre, saltTopOff, weightOfWater } from './kinds/salt.ts';
import { strength } from './kinds/strength.ts';
import { state, type Stated } from './stated.ts';

/** The particular before the general; the first whose quantities are all there judges it. */
const kinds: readonly Judge[] = [
  peroxideByVolume,
  bakedYield,
  strength,
  phOfSalt,
  limeSafety,
  elementShare,
  spoonWeight,
  limeByVolume,
  doseRule,
  cupsOfSalt,
  foodAsNitrate,
  rockByVolume,
  rockShare,
  weightOfWater,
  saltTopOff,
  salinityPace,
  gravityStep,
  gravityAsPpt,
  conductivityAsPpt,
  saltPerLitre,
  sumOfChanges,
  continuousAsBatch,
  changeCuts,
  changeTakesTo,
  settlesAt,
  luxFactor,
  sameDailyLight,
  dailyTotal,
  wattsPerVolume,
  turnover,
  nitrateToPhosphate,
  magnesiumToCalcium,
  naturalLevel,
  paceRule,
  calciumWithAlk,
  elementAsIon,
  unitFactor,
  ppmAsMgL,
  equalUnits,
];

/** The rule in a text judged, or undefined where its quantities make no rule that is known. */
export function judge(text: string): Claim | undefined {
  return judgeStated(state(scan(text)));
}

/** A rule with the words that say it. */
export interface Found {
  readonly text: string;
  readonly claim: Claim;
}

/**
 * The rule somewhere in a message: all of it together, else the first of its clauses that holds one by itself ("they say
 * 4 x 20 % is 80 %, mine is at 30 and I want 5").
 */
export function ruleWithin(scanned: Scanned): Found | undefined {
  const whole = judgeStated(state(scanned));
  if (whole !== undefined) return { text: scanned.text, claim: whole };
  for (const text of clausesOf(scanned)) {
    const claim = judge(text);
    if (claim !== undefined) return { text, claim };
  }
  return undefined;
}

const ENDS: ReadonlySet<string> = new Set(['.', ',', ';', '?', '!', '(', ')']);

function clausesOf({ text, tokens }: Scanned): readonly string[] {
  const ends = tokens.filter(({ word }) => ENDS.has(word)).map(({ start }) => start);
  return [...ends, text.length].map((end, at) => text.slice((ends[at - 1] ?? -1) + 1, end).trim());
}

export function judgeStated(stated: Stated): Claim | undefined {
  for (const kind of kinds) {
    const found = attempt(() => kind(stated));
    if (found !== undefined) return found;
  }
  return undefined;
}

/** A number that cannot be read is no reason to fail: the rule is then not of that kind. */
function attempt(run: () => Claim | undefined): Claim | undefined {
  try {
    return run();
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}
