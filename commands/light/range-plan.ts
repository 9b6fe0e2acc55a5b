import { middleOf, type CoralLight } from '../../core/corals/light-need.ts';
import { par, shownPpfd } from '../../core/light/band.ts';
import { rampPlan } from '../../core/light/ramp.ts';
import { fixed } from '../../core/quantity/format.ts';
import type { Table } from '../answer.ts';

/** Rows shown, today's among them; a longer plan is cut and said to be. */
const MOST_ROWS = 16;

/** The lamp's setting, per cent, and the light it gives at the spot, umol m-2 s-1. */
export interface LampReading {
  readonly ppfd: number;
  readonly settingPercent: number;
}

/** From where a piece begins to the middle of its range, or as far as the lamp goes. */
export interface RaisePlan {
  readonly weeks: number;
  readonly beginPpfd: number;
  readonly goalPpfd: number;
  readonly lampAtEnd: boolean;
  readonly table: Table;
}

/**
 * The raise at the pace of the piece from `beginPpfd` to the middle of its range; undefined where there is nothing to
 * raise. Where the lamp's setting is known the setting is what goes up, and the light follows from it.
 */
export function raisePlan(
  need: CoralLight,
  beginPpfd: number,
  lamp: LampReading | undefined,
): RaisePlan | undefined {
  const goalPpfd = middleOf(need);
  const pace = need.raisePercentAWeek;
  if (beginPpfd < 1 || beginPpfd >= goalPpfd) return undefined;
  if (lamp !== undefined) return settingPlan(lamp, beginPpfd, goalPpfd, pace);
  const { weeks, steps } = rampPlan(beginPpfd, goalPpfd, pace);
  const rows = [
    ['today', fixed(beginPpfd, 1)],
    ...steps.map(({ week, value }) => [`week ${week}`, fixed(value, 3)]),
  ];
  return {
    weeks,
    beginPpfd,
    goalPpfd,
    lampAtEnd: false,
    table: { head: ['', 'PAR'], rows: rows.slice(0, MOST_ROWS) },
  };
}

function settingPlan(
  lamp: LampReading,
  beginPpfd: number,
  middlePpfd: number,
  pacePercent: number,
): RaisePlan | undefined {
  const from = settingFor(lamp, beginPpfd);
  const wanted = settingFor(lamp, middlePpfd);
  if (from === undefined || wanted === undefined) return undefined;
  const to = Math.min(100, wanted);
  if (from >= to) return undefined;
  const { weeks, steps } = rampPlan(from, to, pacePercent);
  const rows = [
    { when: 'today', value: from },
    ...steps.map(({ week, value }) => ({ when: `week ${week}`, value })),
  ];
  const light = lightsOf(
    lamp,
    rows.map(({ value }) => value),
    pacePercent,
  );
  if (light[0] === light.at(-1)) return undefined;
  return {
    weeks,
    beginPpfd: light[0] ?? beginPpfd,
    goalPpfd: light.at(-1) ?? middlePpfd,
    lampAtEnd: wanted > 100,
    table: {
      head: ['', 'PAR', 'setting'],
      rows: rows
        .slice(0, MOST_ROWS)
        .map(({ when, value }, i) => [when, fixed(light[i] ?? 0, 1), `${fixed(value, 3)} %`]),
    },
  };
}

/** The light of each setting as it is printed: rounded, and never further above the one before than the pace. */
function lightsOf(
  { ppfd, settingPercent }: LampReading,
  settings: readonly number[],
  pacePercent: number,
): readonly number[] {
  const lights: number[] = [];
  for (const setting of settings) {
    const light = shownPpfd((ppfd * setting) / settingPercent);
    const before = lights.at(-1);
    const most = before === undefined ? light : before * (1 + pacePercent / 100);
    const scale = most < 20 ? 10 : 1;
    lights.push(light <= most ? light : Math.floor(most * scale + 1e-6) / scale);
  }
  return lights;
}

/**
 * The setting for a light from one reading: the light is taken to go with the setting. Rounded down, to the safer side;
 * whole from 20 % up, below that to a tenth. Undefined under 1 %; over 100 where the lamp cannot give it.
 */
export function settingFor({ ppfd, settingPercent }: LampReading, wantedPpfd: number): number | undefined {
  const percent = (settingPercent * wantedPpfd) / ppfd;
  const scale = percent < 20 ? 10 : 1;
  const floored = Math.floor(percent * scale + 1e-9) / scale;
  return floored < 1 ? undefined : floored;
}

/** "52 %", "over 100 %", "under 1 %". */
export function settingText(lamp: LampReading, wantedPpfd: number): string {
  const percent = settingFor(lamp, wantedPpfd);
  if (percent === undefined) return 'under 1 %';
  return percent > 100 ? 'over 100 %' : `${fixed(percent, 1)} %`;
}

/** The raise of a lamp's setting without a meter; no light follows from it. */
export function settingTable(fromPercent: number, toPercent: number, pacePercent: number): Table | undefined {
  if (fromPercent >= toPercent) return undefined;
  const { steps } = rampPlan(fromPercent, toPercent, pacePercent);
  const rows = [
    ['today', fromPercent] as const,
    ...steps.map(({ week, value }) => [`week ${week}`, value] as const),
  ];
  return {
    head: ['', 'setting'],
    rows: rows.slice(0, MOST_ROWS).map(([when, value]) => [when, `${fixed(value, 3)} %`]),
  };
}

export function planWords(
  { weeks, beginPpfd, goalPpfd, lampAtEnd }: RaisePlan,
  pacePercent: number,
): readonly string[] {
  const end = lampAtEnd ? 'where the lamp is at its end' : 'about the middle of its range';
  const steps = weeks === 1 ? 'one step' : `${weeks} weekly steps`;
  const shown = weeks < MOST_ROWS ? '' : ` The first ${MOST_ROWS - 1} are in the table.`;
  return [
    `Later, while it opens well: from ${par(beginPpfd)} to ${par(goalPpfd)} in ${steps} of at most ${pacePercent} %.`,
    'Look before each step; stay as long as it is unsure.',
    `The last is ${end}.${shown}`,
  ];
}
