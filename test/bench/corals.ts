import { check } from '../../core/corals/check.ts';
import { corals } from '../../core/corals/coral-list.ts';
import { lightAt } from '../../core/corals/par-field.ts';
import { propose } from '../../core/corals/propose.ts';
import type { Placed, Scene } from '../../core/corals/scene.ts';
import { readSpot } from '../../core/corals/spot.ts';
import { timed } from './measure.ts';
import { printRows } from './table.ts';

const COUNT = 60;
const box = { lengthCm: 180, widthCm: 70, heightCm: 60 } as const;

/** Sixty kinds strewn over a tank with no thought: far more trouble than any member's. */
function strewn(rough: boolean): Scene {
  const placed = Array.from({ length: COUNT }, (_, i): Placed => {
    const entry = corals[(i * 37) % corals.length];
    if (entry === undefined) throw new Error('no corals');
    const spot = { xCm: (i * 53) % box.lengthCm, yCm: (i * 29) % box.widthCm, zCm: (i * 17) % 45 };
    const diameterCm = 5 + ((i * 7) % 10);
    return { id: i + 1, entry, label: entry.names.common[0], spot, rough, diameterCm, origin: 'unknown' };
  });
  const light = Array.from({ length: 20 }, (_, i) => {
    const [xCm, yCm, zCm] = [(i * 41) % box.lengthCm, (i * 23) % box.widthCm, (i * 13) % 50];
    return { id: i + 1, xCm, yCm, zCm, ppfd: 60 + 5 * zCm, atMs: i };
  });
  return { box, boxGuessed: false, corals: placed, light, flow: 'left to right' };
}

/** A tank of sixty corals checked whole, and better spots for each of them. */
export function benchCorals(): void {
  const scene = strewn(false);
  const rough = strewn(true);
  const proposals = scene.corals.map(({ id }) => timed(() => propose(scene, id), 5, 1).p50);
  printRows(`Placement, ${COUNT} corals strewn about: ${check(scene).length} findings`, [
    { what: 'whole tank checked, median', value: timed(() => check(scene)).p50, unit: 'ms', goal: 5 },
    { what: 'the same, spots in words, median', value: timed(() => check(rough)).p50, unit: 'ms', goal: 5 },
    {
      what: 'better spots, slowest coral (median of its runs)',
      value: Math.max(...proposals),
      unit: 'ms',
      goal: 50,
    },
    {
      what: 'light at a spot from 20 readings, median',
      value: timed(() => lightAt(scene.light, { xCm: 60, yCm: 30, zCm: 20 })).p50,
      unit: 'ms',
    },
    {
      what: 'a spot read, median',
      value: timed(() => readSpot('30 cm from the left, 10 from the front, on the sand', box)).p50,
      unit: 'ms',
      goal: 1,
    },
  ]);
}
