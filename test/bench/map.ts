import { monitorEventLoopDelay, performance } from 'node:perf_hooks';
import { setImmediate as nextTurn, setTimeout as pause } from 'node:timers/promises';
import { toPng } from '../../bot/png.ts';
import { check } from '../../core/corals/check.ts';
import { tankMap, type MapPicture } from '../../core/picture/tank-map.ts';
import { strewn } from '../core/picture/tank-map-scenes.ts';
import { quantiles, timed, type Timing } from './measure.ts';
import { printRows } from './table.ts';

const AT_ONCE = 10;
const scene = strewn({ count: 60, points: 40 });

/** What a map of a full tank costs, and how long it holds up everything else. */
export async function benchMap(): Promise<void> {
  const judged = timed(() => check(scene), 100, 50);
  const text = timed(drawn, 100, 50);
  const png = await pngOf(30);
  const longest = await longestDelay();
  printRows(`Map of the tank, 60 corals and 40 light points: ${drawn()[0]?.svg.length} characters of SVG`, [
    { what: 'placement of all corals, median', value: judged.p50, unit: 'ms' },
    { what: 'placement and SVG text, median', value: text.p50, unit: 'ms' },
    { what: 'the same, 99th percentile', value: text.p99, unit: 'ms' },
    { what: 'with the PNG, median', value: png.p50, unit: 'ms', goal: 200 },
    { what: 'with the PNG, 99th percentile', value: png.p99, unit: 'ms' },
    { what: `longest event-loop delay while ${AT_ONCE} are drawn`, value: longest, unit: 'ms', goal: 20 },
  ]);
}

function drawn(): readonly MapPicture[] {
  return tankMap(scene, check(scene));
}

async function pngOf(runs: number): Promise<Timing> {
  const values: number[] = [];
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    for (const { svg } of drawn()) await toPng(svg);
    values.push(performance.now() - start);
  }
  return quantiles(values);
}

/** Milliseconds the event loop came late at most while maps are asked for, each in a turn of its own as members do. */
async function longestDelay(): Promise<number> {
  const watch = monitorEventLoopDelay({ resolution: 1 });
  watch.enable();
  await pause(50);
  watch.reset();
  const maps: Promise<Uint8Array>[] = [];
  for (let i = 0; i < AT_ONCE; i++) {
    maps.push(...drawn().map(({ svg }) => toPng(svg)));
    await nextTurn();
  }
  await Promise.all(maps);
  await pause(10);
  watch.disable();
  return watch.max / 1e6;
}
