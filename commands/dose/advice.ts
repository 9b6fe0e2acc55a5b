import type { Compound } from '../../core/dosing/compound.ts';
import { saturationGL } from '../../core/dosing/limewater.ts';
import { solutionMl, stockFor, WEIGHABLE_G } from '../../core/dosing/solution.ts';
import { volume } from '../../core/quantity/format.ts';
import { drawn, portionWords, type Portions, roundedDown, weighed } from '../../core/quantity/portion.ts';
import type { ParameterId } from '../../core/water/parameter.ts';

const NOT_NONE =
  'Retest; feed a little more or take less out first: zero on a hobby kit means below its limit, not none.';

/** What comes before a dose of that parameter: the cause in the right order. */
const before: Readonly<Partial<Record<ParameterId, readonly string[]>>> = {
  calcium: [
    'Check salinity first (calibrated instrument): low reads as low calcium. Check alkalinity and magnesium too.',
  ],
  magnesium: ['Check salinity first with a calibrated instrument: low salinity reads as low magnesium.'],
  potassium: ['Check salinity first, and dose only with a potassium test in hand.'],
  strontium: ['Dose only with a test in hand, after salinity is right.'],
  bromide: ['Dose only with a test in hand, after salinity is right.'],
  iodine: [
    'Dose only with a test in hand: too much iodide harms, and it changes form and is used within days.',
  ],
  nitrate: [NOT_NONE],
  phosphate: [NOT_NONE],
};

const after: Readonly<Partial<Record<ParameterId, readonly string[]>>> = {
  alkalinity: [
    'Keep your usual daily dosing running (restart it if it was stopped): this dose is on top, to catch up.',
  ],
};

/** The numbered steps of a dose: what to check, how to add a day's portion, when to stop. */
export function doseSteps(compound: Compound, id: ParameterId, plan: Portions): readonly string[] {
  return [
    ...(before[id] ?? []),
    ...adding(compound, plan),
    plan.days > 1
      ? 'Retest before each further portion and stop when the goal is reached.'
      : 'Retest the next day before adding any more.',
    ...(after[id] ?? []),
  ];
}

function adding(compound: Compound, plan: Portions): readonly string[] {
  const each = plan.days > 1 ? 'each day' : 'once';
  const portion = weighed(plan.each, plan.step);
  if (compound.hazard === 'lime') {
    const { low } = saturationGL();
    const litres = volume(plan.each / low);
    return [
      `Never as powder: bring ${portion} ${each} as clear limewater, at least ${litres} of it, by slow drip.`,
    ];
  }
  if (plan.each < WEIGHABLE_G) return smallDose(plan);
  return [
    `Dissolve ${portion} ${each} in fresh (RO) water${compound.hazard === 'calcium-chloride' ? ', powder into water, and let it cool' : ''}.`,
    'Pour it slowly into strong flow, in several parts 15 to 30 minutes apart.',
  ];
}

/** How to measure portions too small to weigh: a stock and the millilitres of it. */
function smallDose(plan: Portions): readonly string[] {
  const { gramsPerLitre } = stockFor(plan.each);
  const make =
    gramsPerLitre === 1
      ? 'dissolve 1 g and fill up to 1 L with fresh water'
      : 'dissolve 1 g in 1 L of fresh water, then dilute 100 mL of that to 1 L';
  const step = solutionMl(plan.step, gramsPerLitre);
  const ml = (massG: number): string => drawn(roundedDown(solutionMl(massG, gramsPerLitre), step), step);
  return [
    `${weighed(plan.each, plan.step)} is too little to weigh: make a stock (${make}).`,
    `Of that stock add ${portionWords(plan, ml)}.`,
  ];
}

/** What a dose can do to what lives in the tank. */
export function doseDangers(compound: Compound, id: ParameterId): readonly string[] {
  return compound.dicPerMol < compound.alkEqPerMol && id === 'alkalinity'
    ? ['It lifts pH: watch it and stop for the day above about 8.45 (common practice).']
    : [];
}

/** What to watch that is not about the powder's hazard. */
export function doseCautions(compound: Compound, id: ParameterId): readonly string[] {
  return [
    'Not more: start at or below the computed amount.',
    ...(id === 'calcium' || (id === 'alkalinity' && compound.hazard !== 'lime')
      ? [
          'Never mix the calcium part and the alkalinity part together: they fall out as chalk. Add them well apart.',
        ]
      : []),
    ...(id === 'phosphate' || id === 'nitrate'
      ? ['Use a clean grade without trace metals, never garden fertiliser blends.']
      : []),
    ...(id === 'phosphate' ? ['Rock and sand soak part of it up.'] : []),
  ];
}
