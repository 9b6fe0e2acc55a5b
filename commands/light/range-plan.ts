import type { CoralLight } from '../../core/corals/light-need.ts';
import { rampPlan } from '../../core/light/ramp.ts';
import { fixed } from '../../core/quantity/format.ts';
import type { Table } from '../answer.ts';
import { par } from './words.ts';

/** Weeks shown; a longer plan ends with its last week. */
const MOST_ROWS = 12;

/** From where a piece begins to the middle of its range. */
export interface RaisePlan {
  readonly weeks: number;
  readonly beginPpfd: number;
  readonly goalPpfd: number;
  readonly table: Table;
}

/**
 * The raise at the pace of the piece from `beginPpfd` to the middle of its range; undefined where there is nothing to
 * raise. `settingOf` is the lamp's setting for a light, where one is known.
 */
export function raisePlan(
  need: CoralLight,
  beginPpfd: number,
  settingOf: ((ppfd: number) => string) | undefined,
): RaisePlan | undefined {
  const goalPpfd = Math.round((need.lowPpfd + need.highPpfd) / 10) * 5;
  if (beginPpfd < 1 || beginPpfd >= goalPpfd) return undefined;
  const { weeks, steps } = rampPlan(beginPpfd, goalPpfd, need.raisePercentAWeek);
  const all = [
    { when: 'today', ppfd: beginPpfd },
    ...steps.map(({ week, value }) => ({ when: `week ${week}`, ppfd: value })),
  ];
  const last = all.at(-1);
  const shown = all.length <= MOST_ROWS || last === undefined ? all : [...all.slice(0, MOST_ROWS - 1), last];
  return {
    weeks,
    beginPpfd,
    goalPpfd,
    table: {
      head: ['', 'PAR', ...(settingOf === undefined ? [] : ['setting'])],
      rows: shown.map(({ when, ppfd }) => [
        when,
        fixed(ppfd, 0),
        ...(settingOf === undefined ? [] : [settingOf(ppfd)]),
      ]),
    },
  };
}

/** "52 %", from one reading: the light is taken to go with the setting. Rounded down, to the safer side. */
export function settingFor(reading: { readonly ppfd: number; readonly settingPercent: number }) {
  return (ppfd: number): string => {
    const percent = (reading.settingPercent * ppfd) / reading.ppfd;
    if (percent > 100) return 'over 100 %';
    if (percent < 1) return 'under 1 %';
    const scale = percent < 10 ? 10 : 1;
    return `${fixed(Math.floor(percent * scale + 1e-9) / scale, 1)} %`;
  };
}

/** The raise of a lamp's setting without a meter, inside its usual band; no light follows from it. */
export function settingTable(fromPercent: number, toPercent: number, pacePercent: number): Table | undefined {
  if (fromPercent >= toPercent) return undefined;
  const { steps } = rampPlan(fromPercent, toPercent, pacePercent);
  return {
    head: ['', 'setting'],
    rows: [
      ['today', `${fixed(fromPercent, 0)} %`],
      ...steps.slice(0, MOST_ROWS).map(({ week, value }) => [`week ${week}`, `${fixed(value, 0)} %`]),
    ],
  };
}

export function planWords({ weeks, beginPpfd, goalPpfd }: RaisePlan, pacePercent: number): string {
  return `From ${par(beginPpfd)} to ${par(goalPpfd)}, the middle of its range, in ${weeks} weekly steps of at most ${pacePercent} %. Look before each step; stay as long as it is unsure.`;
}
