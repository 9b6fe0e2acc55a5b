import { Problem } from '../problem.ts';
import { hear } from '../words/hear.ts';
import type { Claim, Recogniser } from './claim.ts';
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
import { ruleText } from './rule-text.ts';

/** The particular before the general; the first that knows the rule judges it. */
const recognisers: readonly Recogniser[] = [
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

/** The rule in a text judged, or undefined where no rule is recognised. Pure and linear in the text's length. */
export function judge(text: string): Claim | undefined {
  const heard = hear(ruleText(text));
  for (const recognise of recognisers) {
    const found = attempt(() => recognise(heard));
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
