import { localTime } from '../../core/words/when.ts';
import { printed } from '../../core/log/value.ts';
import { counted, fixed, significant, span } from '../../core/quantity/format.ts';
import type { Interval } from '../../core/trend/point.ts';
import type { Use } from '../../core/trend/use.ts';
import { sizeWords } from '../../core/trend/words.ts';
import { parameter } from '../../core/water/parameter.ts';
import type { Fact } from '../answer.ts';
import type { Tank } from '../keep.ts';
import { MOST_RINGED, type Method, type OneTrend } from './trend-one.ts';

const A_DAY = { word: 'a day', days: 1 } as const;
/** Further than this a straight line is no forecast: common practice, no source. */
const MOST_AHEAD_DAYS = 60;

/** The answer in one sentence. */
export function headlineOf(all: readonly OneTrend[]): string {
  const moving = all.filter(({ trend }) => trend !== undefined && trend.verdict !== 'within error');
  const still = all.filter(({ trend }) => trend?.verdict === 'within error');
  const moved = moving.map((one) => `${labelOf(one)} is ${one.trend?.verdict} by ${sizeOf(one)}`);
  const [first] = still;
  const only = still.length === 1 && first !== undefined ? `: ${sizeOf(first)}` : '';
  const rest = still.length === 0 ? [] : [`no trend beyond error in ${listed(still.map(labelOf))}${only}`];
  const sentence = [...(moved.length === 0 ? [] : [moved.join(', ')]), ...rest].join('; ');
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`.replace(/^PH\b/, 'pH');
}

/** Where each parameter stands, what it uses, and when it would leave its target. */
export function factsOf(one: OneTrend, zone: string): readonly Fact[] {
  const { panel, use, edge, trend } = one;
  const { label: name, unit, decimals, readings } = panel;
  const latest = readings.at(-1);
  if (latest === undefined) return [];
  const values = readings.map(({ value }) => value);
  const [low, high] = [values.reduce((a, b) => Math.min(a, b)), values.reduce((a, b) => Math.max(a, b))];
  const count =
    readings.length === 1
      ? '1 reading'
      : `${readings.length} readings, ${span(fixed(low, decimals), fixed(high, decimals))}`;
  const at = localTime(latest.atMs, zone).slice(0, 10);
  const standing = {
    label: name,
    value: `${fixed(latest.value, decimals)} ${unit} on ${at}; ${count}; ${trendOf(one)}`.replace('  ', ' '),
  };
  const facts: Fact[] = [{ ...standing, verdict: verdictOf(latest.value, panel.target) }];
  if (use !== undefined) {
    const additions = `${use.additions === 0 ? 'no addition' : counted(use.additions, 'addition')} counted`;
    facts.push({ label: `${name} used`, value: `${usedOf(use, unit)}, ${additions}` });
  }
  if (edge !== undefined && trend !== undefined && edge.low <= MOST_AHEAD_DAYS) {
    const end = `${fixed(edge.value, decimals)} ${unit}`.trim();
    facts.push({ label: `${name} at this pace`, value: `leaves its target at ${end} ${whenOf(edge)}` });
  }
  return facts;
}

function whenOf({ low, high }: Interval): string {
  if (high < 1) return 'now';
  const [soon, late] = [significant(low, 2), significant(high, 2)];
  if (high > MOST_AHEAD_DAYS) return `in ${soon} days or more`;
  return soon === late ? `in about ${soon} days` : `in ${soon} to ${late} days`;
}

/** How each number was made. */
export function workingOf(one: OneTrend, method: Method): readonly string[] {
  const { panel, use, trend } = one;
  const name = panel.label;
  if (trend === undefined) return [];
  const count = panel.readings.length;
  const how =
    method === 'robust'
      ? `median of the slopes of all pairs of ${count} readings (Theil-Sen); range by ranks`
      : `least squares line through ${count} readings; range by Student’s t with ${count - 2} degrees of freedom`;
  const kit = `${significant(panel.resolution, 2)} ${panel.unit}`.trim();
  const floor = trend.kitOnly
    ? `too few readings for a range by their scatter, so the range is what the kit leaves open (${kit})`
    : `never narrower than the kit leaves open (${kit} between the first and the last)`;
  const taken =
    use === undefined || use.additions === 0
      ? ''
      : ` with additions (+${significant(use.added, 3)} ${panel.unit} in all) taken off`;
  const salinity = use?.atOneSalinity === true ? ', taken to one salinity' : '';
  const used =
    use === undefined
      ? []
      : [
          `${name} used: median of the slopes of all pairs of believable readings${taken}${salinity}, as /dose use has it; a water change that is not logged counts as use or as a rise`,
        ];
  return [`${name}: ${how}, 95 %; ${floor}`, ...used];
}

/** What asks for a second test: fast moves, a sudden change of use, readings nobody should believe. */
export function alertsOf(
  { panel, fast, fastCount, change, doubted, id }: OneTrend,
  tank: Tank,
): readonly string[] {
  const { label } = parameter(id);
  const ringed = fastCount > MOST_RINGED ? `the last ${MOST_RINGED} of them` : 'them';
  const more =
    fastCount > 1
      ? [`${panel.label} moved that fast ${fastCount} times in this span; the picture rings ${ringed}.`]
      : [];
  const use = (perDay: number): string => `${fixed(perDay, 2)} ${panel.unit} a day`;
  return [
    ...doubted
      .slice(-1)
      .map(
        (value) =>
          `${doubted.length} of the ${label} readings cannot be believed (the last: ${printed(id, value, tank.units)}). Test again; they still pull at a straight line.`,
      ),
    ...(fast === undefined ? [] : [fast]),
    ...more,
    ...(change === undefined
      ? []
      : [
          `The use of ${label} went ${change.direction}: ${use(change.perDay)} in the last interval, where ${use(change.usualPerDay)} was usual over the ${change.earlier} before. One wrong reading looks the same: test again first.`,
        ]),
  ];
}

export function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

function labelOf({ id }: OneTrend): string {
  return parameter(id).label;
}

function sizeOf({ trend, per, panel }: OneTrend): string {
  return trend === undefined ? '' : sizeWords(trend, per, panel.unit);
}

function trendOf(one: OneTrend): string {
  if (one.trend === undefined) return 'too few readings, or too short a time, for a trend';
  return one.trend.verdict === 'within error'
    ? `no trend beyond error (${sizeOf(one)})`
    : `${one.trend.verdict} ${sizeOf(one)}`;
}

/** The line of a use falls by what is used. */
function usedOf({ line }: Use, unit: string): string {
  if (line.verdict === 'falling') return sizeWords(line, A_DAY, unit);
  if (line.verdict === 'rising') return `none: it rose by itself, ${sizeWords(line, A_DAY, unit)}`;
  const turned = { ...line, perDay: -line.perDay, range: { low: -line.range.high, high: -line.range.low } };
  return `no use to be seen beyond error, ${sizeWords(turned, A_DAY, unit)}`;
}

function verdictOf(value: number, target: readonly [number, number] | undefined): string {
  if (target === undefined) return 'no target';
  if (value < target[0]) return 'low';
  return value > target[1] ? 'high' : 'in target';
}
