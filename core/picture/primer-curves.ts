import { saturationGL } from '../dosing/limewater.ts';
import { rampPlan } from '../light/ramp.ts';
import { fixed } from '../quantity/format.ts';
import { meqLFromDkh } from '../water/alkalinity.ts';
import { alkUmolKgFromMeqL, fromAlkalinityAndPco2 } from '../water/carbonate.ts';
import { convertPh, ph } from '../water/ph-scale.ts';
import { palette } from './palette.ts';
import { chart } from './primer-chart.ts';
import type { PrimerPicture } from './primer-frame.ts';

const range = (from: number, to: number, step: number): readonly number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step);

/** A smooth hump: a sketch of a course, no measurement. */
const hump = (peak: number, width: number) => (week: number) => Math.exp(-(((week - peak) / width) ** 2));

const nitrate = (week: number): number => 0.95 / (1 + Math.exp(-1.9 * (week - 3.6)));

/** How ammonia, nitrite and nitrate follow each other in a new tank: a sketch, common practice. */
export function cycleCourse(): PrimerPicture {
  const weeks = range(0, 6, 0.1);
  const [ammonia, nitrite] = [hump(1, 0.75), hump(2.6, 0.9)];
  const points = (f: (week: number) => number): readonly (readonly [number, number])[] =>
    weeks.map((week) => [week, f(week)] as const);
  return chart({
    title: 'The course of a cycle, a sketch',
    alt: 'The course of a cycle, a sketch without scale: ammonia rises and peaks in about the first week and falls to zero; nitrite peaks after it, in the second or third week, and falls to zero; nitrate rises last and stays. Your own weeks will differ.',
    xName: 'weeks, yours will differ',
    yName: 'level',
    x: [0, 6],
    y: [0, 1.15],
    xTicks: [0, 1, 2, 3, 4, 5, 6],
    yTicks: [],
    curves: [
      { name: 'ammonia', points: points(ammonia), colour: palette.alert, at: [0.35, 1.06] },
      { name: 'nitrite', points: points(nitrite), colour: palette.trend, dash: '16 8', at: [2.2, 1.06] },
      { name: 'nitrate', points: points(nitrate), colour: palette.reading, dash: '3 7', at: [4.6, 1.02] },
    ],
  });
}

const heldAt = (t: number): string => `${fixed(saturationGL(t).low, 2)} to ${fixed(saturationGL(t).high, 2)}`;

/** How much lime a litre holds, warm and cold. */
export function limeSolubility(): PrimerPicture {
  const temps = range(10, 35, 1);
  const [low, high] = (['low', 'high'] as const).map((end) =>
    temps.map((t) => [t, saturationGL(t)[end]] as const),
  );
  return chart({
    title: 'A litre of limewater holds at most',
    alt: `A litre of limewater holds at most, in grams of calcium hydroxide: ${heldAt(10)} at 10 °C, ${heldAt(20)} at 20 °C, ${heldAt(25)} at 25 °C, ${heldAt(35)} at 35 °C. Warm water holds less. The two lines are the lowest and the highest source.`,
    xName: '°C',
    yName: 'g in a litre',
    x: [10, 35],
    y: [1.2, 2],
    xTicks: [10, 15, 20, 25, 30, 35],
    yTicks: [1.2, 1.4, 1.6, 1.8, 2],
    curves: [
      { name: 'highest source', points: high ?? [], colour: palette.trend, dash: '16 8', at: [21, 1.81] },
      { name: 'lowest source', points: low ?? [], colour: palette.reading, at: [12, 1.46] },
    ],
  });
}

const WATER = { practicalSalinity: 35, tempC: 25 } as const;
/** A probe set in common buffers shows the NBS scale. */
function phAt(dkh: number, pco2Uatm: number): number {
  const state = fromAlkalinityAndPco2(alkUmolKgFromMeqL(meqLFromDkh(dkh), WATER), pco2Uatm, WATER);
  return convertPh(ph('total', state.phTotal), 'nbs', WATER).value;
}

const said = (dkh: number): string =>
  `${fixed(phAt(dkh, 420), 2)} outdoors (420), ${fixed(phAt(dkh, 1000), 2)} at 1000 and ${fixed(phAt(dkh, 2000), 2)} at 2000`;

/** pH against the CO2 of the room, for two alkalinities. */
export function phAgainstCo2(): PrimerPicture {
  const co2 = range(400, 2000, 50);
  const curve = (dkh: number): readonly (readonly [number, number])[] =>
    co2.map((c) => [c, phAt(dkh, c)] as const);
  return chart({
    title: 'pH against CO2 in the air of the room',
    alt: `pH of water in balance with air, by the CO2 of the air in parts per million: at 8 dKH ${said(8)}; at 11 dKH ${said(11)}. Fresh air moves pH more than alkalinity does. Shaded: 7.8 to 8.4.`,
    xName: 'CO2 in the air, ppm',
    yName: 'pH, as a probe shows it',
    x: [400, 2000],
    y: [7.4, 8.6],
    xTicks: [400, 800, 1200, 1600, 2000],
    yTicks: [7.4, 7.8, 8.2, 8.6],
    band: [7.8, 8.4],
    curves: [
      { name: '11 dKH', points: curve(11), colour: palette.trend, dash: '16 8', at: [1150, 8.16] },
      { name: '8 dKH', points: curve(8), colour: palette.reading, at: [620, 7.85] },
    ],
  });
}

/** Light raised week by week for a new coral. */
export function lightStairs(): PrimerPicture {
  const [now, goal] = [100, 150];
  const plan = rampPlan(now, goal);
  const points = [[0, now] as const, ...plan.steps.map(({ week, value }) => [week, value] as const)];
  const last = [plan.weeks + 1, goal] as const;
  return chart({
    title: 'Light for a new coral, week by week',
    alt: `Light for a new coral raised from ${now} to ${goal} PAR by at most 10 % a week: ${plan.steps.map(({ week, value }) => `week ${week} ${fixed(value, 0)}`).join(', ')}. Common practice.`,
    xName: 'weeks in the tank',
    yName: 'PAR at the coral',
    x: [0, plan.weeks + 1],
    y: [80, 160],
    xTicks: range(0, plan.weeks + 1, 1),
    yTicks: [80, 100, 120, 140, 160],
    curves: [
      { name: '10 % a week at most', points: [...points, last], colour: palette.reading, at: [2.4, 91] },
    ],
    steps: true,
  });
}
