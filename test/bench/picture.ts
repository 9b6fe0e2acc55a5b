import { monitorEventLoopDelay, performance } from 'node:perf_hooks';
import { setTimeout as pause } from 'node:timers/promises';
import { toPng } from '../../bot/png.ts';
import { trendSvg } from '../../core/picture/trend.ts';
import { pointsFrom } from '../../core/trend/dated.ts';
import { theilSen } from '../../core/trend/robust.ts';
import { samplePanel, samplePicture, START_MS } from '../core/picture/sample.ts';
import { quantiles, timed } from './measure.ts';
import { printRows } from './table.ts';

const four = ['alkalinity', 'calcium', 'nitrate', 'phosphate'] as const;
const AT_ONCE = 10;

/** What trend pictures cost, and how long they hold up everything else. */
export async function benchPicture(): Promise<void> {
  const many = samplePanel('alkalinity', { count: 400, days: 90, additions: 90 });
  const one = samplePicture([samplePanel('alkalinity', { additions: 9 })]);
  const panels = samplePicture(four.map((id) => samplePanel(id, { count: 60, days: 90, additions: 20 })));
  const points = pointsFrom(START_MS, many.readings);
  const robust = timed(() => theilSen(points), 40, 10);
  const text = timed(() => trendSvg(samplePicture([many])), 100, 20);
  const single = await drawn(trendSvg(one), 30);
  const multiple = await drawn(trendSvg(panels), 30);
  const longest = await longestDelay(trendSvg(panels));
  printRows('Trend pictures', [
    { what: 'Theil-Sen line of 400 readings, median', value: robust.p50, unit: 'ms' },
    { what: 'SVG text, 400 readings, median', value: text.p50, unit: 'ms' },
    { what: 'PNG, 1 parameter, 14 readings, median', value: single.p50, unit: 'ms' },
    { what: 'PNG, 1 parameter, 99th percentile', value: single.p99, unit: 'ms' },
    { what: 'PNG, 4 parameters of 60 readings, median', value: multiple.p50, unit: 'ms' },
    { what: 'PNG, 4 parameters, 99th percentile', value: multiple.p99, unit: 'ms', goal: 1000 },
    { what: `longest event-loop delay while ${AT_ONCE} are drawn`, value: longest, unit: 'ms', goal: 50 },
  ]);
}

async function drawn(svg: string, runs: number): ReturnType<typeof measured> {
  for (let i = 0; i < 3; i++) await toPng(svg);
  return measured(svg, runs);
}

async function measured(svg: string, runs: number) {
  const values: number[] = [];
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    await toPng(svg);
    values.push(performance.now() - start);
  }
  return quantiles(values);
}

/** Milliseconds the event loop came late at most, beyond the 1 ms the watch itself waits. */
async function longestDelay(svg: string): Promise<number> {
  const watch = monitorEventLoopDelay({ resolution: 1 });
  watch.enable();
  await pause(50);
  watch.reset();
  await Promise.all(Array.from({ length: AT_ONCE }, () => toPng(svg)));
  await pause(10);
  watch.disable();
  return watch.max / 1e6;
}
