import { handling } from '../../core/care/hazards.ts';
import { capacity, checkedTopOff, recipe, type Strength } from '../../core/dosing/limewater.ts';
import { fixed, mass, significant, volume, volumeAsWritten } from '../../core/quantity/format.ts';
import { decimalsOf, roundedDown, threeFigures, weighable } from '../../core/quantity/portion.ts';
import type { Quantity } from '../../core/quantity/read.ts';
import { calciumWithAlkalinity } from '../../core/water/alkalinity.ts';
import { answer, type Answer } from '../answer.ts';
import { shown } from './asked.ts';

/** A volume of limewater, how strong it can be and how warm it is. */
export interface Limewater {
  readonly litres: Quantity;
  readonly strength: Strength;
  readonly tempC: number;
  /** What was taken for granted of both. */
  readonly notes: readonly string[];
}

/** How to handle and dose limewater. */
export const limewaterCare = {
  dangers: [
    ...handling('lime').dangers,
    'Drip it slowly, best at night, into strong flow, pH at or below 8.5; never pour it in at once.',
  ],
  cautions: [
    'When evaporation changes with the season, lime in the top-off changes with it: measure alkalinity again.',
    'Cover the vessel: air turns the lime to chalk. Use the clear part only, never shaken up, and leave the last centimetres.',
    ...handling('lime').cautions,
  ],
};
export const limewaterSources = ['bates56', 'lange', 'memory', 'iupac21', 'dkh', 'practice', 'ghs'] as const;

/** What limewater in the daily top-off brings, and the lime that covers a use (meq/L a day) where one is known. */
export function topOff(
  { litres, strength, tempC, notes }: Limewater,
  tankL: number,
  tankRead: readonly string[],
  use: Quantity | undefined,
): Answer {
  const full = capacity(checkedTopOff(litres.value, tankL), strength.low, tankL);
  const read = [
    `top-off ${volumeAsWritten(litres.value, litres.written, litres.unit)} a day, limewater at ${fixed(tempC, 1)} °C`,
    ...notes,
    ...tankRead,
    ...(use === undefined ? [] : [`use ${shown('alkalinity', use.value)} a day`, ...use.notes]),
  ];
  const most = `${significant(full.meq, 3)} meq a day: ${shown('alkalinity', full.alkMeqL)} and ${significant(full.calciumMgL, 2)} mg/L calcium`;
  const working = [
    `Saturated limewater: ${significant(strength.low, 4)} g/L (up to ${significant(strength.high, 4)}) = ${significant(capacity(1, strength.low, 1).meq, 3)} meq per litre`,
    `× ${volume(litres.value)} = ${significant(full.meq, 3)} meq; / ${volume(tankL)} = ${shown('alkalinity', full.alkMeqL)}`,
  ];
  const common = {
    read: [...new Set(read)],
    ...limewaterCare,
    sources: limewaterSources,
  };
  if (use === undefined) {
    return answer({
      ...common,
      headline: `At most ${most} from ${volume(litres.value)} of saturated limewater in ${volume(tankL)}.`,
      steps: [
        'Measure the daily use first (/dose use), then ask again with it as goal: full strength may be too much.',
      ],
      working,
    });
  }
  const lime = recipe(use.value, tankL, litres.value, strength.low);
  const dayG = weighable(lime.limeG);
  const perLitre = `${significant(roundedDown(lime.perLitreG, threeFigures(lime.perLitreG)), 3)} g`;
  const need = `${shown('alkalinity', use.value)} × ${volume(tankL)} = ${significant(lime.needMeq, 3)} meq; × 0.03705 g per meq = ${mass(lime.limeG)}`;
  const facts = [
    { label: 'The top-off can carry', value: most },
    { label: 'The tank uses', value: `${significant(lime.needMeq, 3)} meq a day` },
  ];
  if (lime.ofSaturation > 1) {
    return answer({
      ...common,
      headline: `No: ${volume(litres.value)} of limewater a day gives at most ${shown('alkalinity', full.alkMeqL)} of the ${shown('alkalinity', use.value)} a day.`,
      facts,
      steps: [
        'Let limewater carry part of the use and dose the rest of alkalinity and calcium separately.',
        'Do not evaporate or add more fresh water for the sake of lime: salinity would fall.',
      ],
      working: [...working, need],
    });
  }
  return answer({
    ...common,
    headline: `Yes: ${dayG} of calcium hydroxide a day, ${perLitre} per litre of top-off, covers ${shown('alkalinity', use.value)} a day in ${volume(tankL)}.`,
    facts: [
      {
        label: 'Strength',
        value: `${fixed(lime.ofSaturation * 100, 0)} % of saturation: full strength would overdose by ${shown('alkalinity', full.alkMeqL - use.value)} a day`,
      },
      {
        label: 'Or as saturated limewater',
        value: mixed(litres.value, lime.saturatedL),
      },
      ...facts,
      {
        label: 'Calcium with it',
        value: `${significant(calciumWithAlkalinity(use.value), 2)} mg/L a day, the ratio growth uses`,
      },
    ],
    steps: [
      'Start with less than computed, test alkalinity daily at the same hour, then adjust.',
      'Stop or lower other alkalinity and calcium dosing by as much.',
    ],
    working: [
      ...working,
      need,
      `${mass(lime.limeG)} / ${volume(litres.value)} = ${significant(lime.perLitreG, 3)} g per litre, rounded down to what is weighed`,
    ],
  });
}

/** "1.79 L of it with 2 L of plain fresh water": rounded down, and the rest of the top-off as it is printed. */
function mixed(topOffL: number, saturatedL: number): string {
  const step = threeFigures(topOffL);
  const whole = Number(topOffL.toFixed(decimalsOf(step)));
  const part = roundedDown(saturatedL, step);
  const show = (litres: number): string =>
    topOffL < 1
      ? `${fixed(litres * 1000, Math.max(0, decimalsOf(step) - 3))} mL`
      : `${fixed(litres, decimalsOf(step))} L`;
  return `${show(part)} of it with ${show(whole - part)} of plain fresh water`;
}
