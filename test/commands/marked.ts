import type { Keep } from '../../commands/keep.ts';

export const NOW_MS = Date.UTC(2026, 5, 1, 18);
const DAY_MS = 86_400_000;

/** What stands nowhere but among what the member keeps: words, and numbers no example and no table has. */
export const MARKS = [
  'Quorvath',
  'blemmigan',
  'snirtle',
  'wexhollow',
  'drubbit',
  'Chatham',
  'plimforth',
  '617.3',
  '618 L',
  '617 L',
  '7.83',
  '437',
  '1393',
  '33.71',
  '24.37',
  '9.37',
  '43.9',
  '11.71',
] as const;

/** What a member can have kept, all of it marked. */
export function keepMarked(keep: Keep, nowMs: number): number {
  const { id } = keep.addTank({
    name: 'Quorvath',
    kind: 'mixed',
    netVolumeL: 617.3,
    displayVolumeL: 711.3,
    volumeBasis: 'plimforth jugs counted',
    startedOn: '2026-03-03',
    instrument: 'refractometer',
    lightHours: 9.37,
    units: { volume: 'L', alkalinity: 'dKH', temperature: '°C' },
    targets: { alkalinity: [7.83, 8.83] },
  });
  keep.setZone('Pacific/Chatham');
  keep.setGlass(id, { box: { lengthCm: 143.9, widthCm: 61, heightCm: 57 }, flow: 'left to right' });
  for (const day of [6, 4, 2]) {
    keep.addEntry(id, {
      atMs: nowMs - day * DAY_MS,
      note: 'blemmigan',
      values: [
        { parameter: 'alkalinity', value: 7.83 + day / 10 },
        { parameter: 'calcium', value: 437 },
        { parameter: 'magnesium', value: 1393 },
        { parameter: 'salinity', value: 33.71 },
        { parameter: 'temperature', value: 24.37 },
        { parameter: 'nitrate', value: 11.71 },
      ],
    });
  }
  keep.addAddition(id, { atMs: nowMs - 3 * DAY_MS, parameter: 'alkalinity', rise: 0.4, massG: 43.9 });
  const spot = { xCm: 21, yCm: 11, zCm: 4 };
  const placing = { rough: false, diameterCm: 9, origin: 'tank-grown', since: '2026-04-04' } as const;
  keep.addCoral(id, { coralId: 'torch-coral', label: 'snirtle', spot, ...placing });
  keep.addCoral(id, { coralId: 'zoanthus', label: 'drubbit', spot: { ...spot, xCm: 43 }, ...placing });
  keep.addLightPoints(id, [{ spot, ppfd: 143.9, atMs: nowMs }]);
  const plan = { parameters: [], tankId: id, anchor: '2026-06-06 09:00', zone: 'Pacific/Chatham' } as const;
  const rule = { every: 'days', count: 3 } as const;
  keep.addReminder(
    { ...plan, text: 'wexhollow', rule, place: { kind: 'direct' } },
    { nextMs: nowMs + DAY_MS },
  );
  return id;
}
