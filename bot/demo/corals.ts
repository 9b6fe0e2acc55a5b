import type { Keep } from '../../commands/keep.ts';
import type { NewPlacing } from '../../commands/placed.ts';

const at = (xCm: number, yCm: number, zCm: number) => ({ xCm, yCm, zCm });

/** Corals of the demo's first tank, 120 x 50 x 47 cm of water; two stand too close. All of it is made up. */
const placings: readonly NewPlacing[] = [
  {
    coralId: 'torch-coral',
    spot: at(30, 36, 22),
    rough: false,
    diameterCm: 12,
    origin: 'tank-grown',
    since: '2025-11-02',
  },
  {
    coralId: 'hammer-coral-branching',
    spot: at(52, 38, 20),
    rough: false,
    diameterCm: 14,
    origin: 'maricultured',
    since: '2025-12-14',
  },
  {
    coralId: 'zoanthus',
    spot: at(86, 18, 8),
    rough: false,
    diameterCm: 8,
    origin: 'tank-grown',
    since: '2025-08-20',
  },
  {
    coralId: 'montipora-digitata',
    spot: at(92, 34, 34),
    rough: false,
    diameterCm: 9,
    origin: 'tank-grown',
    since: '2026-01-31',
  },
  {
    coralId: 'toadstool-sarcophyton',
    spot: at(104, 26, 16),
    rough: true,
    diameterCm: 11,
    origin: 'unknown',
    since: '2025-07-05',
  },
];

const readings: readonly (readonly [number, number, number, number])[] = [
  [15, 25, 8, 70],
  [30, 36, 22, 140],
  [45, 20, 8, 95],
  [60, 30, 20, 185],
  [60, 30, 36, 290],
  [75, 20, 8, 100],
  [90, 34, 34, 260],
  [105, 25, 8, 75],
  [105, 25, 20, 130],
];

/** Puts the glass, the corals and the readings of a meter into a tank. */
export function fillCorals(keep: Keep, tankId: number, nowMs: number): void {
  keep.setGlass(tankId, { box: { lengthCm: 120, widthCm: 50, heightCm: 47 }, flow: 'left to right' });
  for (const placing of placings) keep.addCoral(tankId, placing);
  const points = readings.map(([x, y, z, ppfd]) => ({ spot: at(x, y, z), ppfd, atMs: nowMs }));
  keep.addLightPoints(tankId, points);
}
