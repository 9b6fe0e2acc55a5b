import type { Keep, LoggedValue, TankProfile } from '../../commands/keep.ts';

const DAY_MS = 86_400_000;
const HOUR_MS = 3_600_000;
const DAYS = 365;
/** Grams of soda ash for 1 dKH in 1 L. */
const SODA_ASH_G = 0.0189;

/** One tank of an invented club, and how its water behaves over a year. All of it is made up. */
export interface ClubTank {
  readonly personId: string;
  readonly profile: TankProfile;
  /** dKH it is brought back to, and what it uses a day at first. */
  readonly alkalinity: { readonly kept: number; readonly usePerDay: number };
  readonly calcium: number;
  readonly magnesium: number;
  readonly nitrate: number;
  readonly phosphate: number;
  readonly salinity: number;
  readonly testEveryDays: number;
}

const units = { volume: 'L', alkalinity: 'dKH', temperature: '°C' } as const;

/** The Saltmarsh Circle, an invented club. The first tank belongs to the person in the room. */
export const club: readonly ClubTank[] = [
  {
    personId: 'local',
    profile: {
      name: 'Hallway',
      kind: 'mixed',
      netVolumeL: 240,
      displayVolumeL: 300,
      volumeBasis: '120 x 50 x 50 cm inside, less rock and sand',
      startedOn: '2025-05-10',
      instrument: 'refractometer',
      lightHours: 9,
      units,
      targets: { alkalinity: [8, 9] },
    },
    alkalinity: { kept: 8.6, usePerDay: 0.14 },
    calcium: 425,
    magnesium: 1320,
    nitrate: 8,
    phosphate: 0.06,
    salinity: 34.8,
    testEveryDays: 4,
  },
  {
    personId: '200000000000000001',
    profile: {
      name: 'Long shelf',
      kind: 'soft',
      netVolumeL: 130,
      volumeBasis: 'counted while filling',
      startedOn: '2024-09-01',
      lightHours: 8,
      units,
      targets: {},
    },
    alkalinity: { kept: 8, usePerDay: 0.04 },
    calcium: 410,
    magnesium: 1290,
    nitrate: 15,
    phosphate: 0.12,
    salinity: 34.2,
    testEveryDays: 10,
  },
  {
    personId: '200000000000000002',
    profile: {
      name: 'Cellar',
      kind: 'small-polyp',
      netVolumeL: 610,
      displayVolumeL: 700,
      volumeBasis: 'measured by a known dose',
      startedOn: '2023-03-20',
      instrument: 'conductivity',
      lightHours: 10,
      units,
      targets: { alkalinity: [7.5, 8.5] },
    },
    alkalinity: { kept: 8.2, usePerDay: 0.25 },
    calcium: 430,
    magnesium: 1350,
    nitrate: 5,
    phosphate: 0.04,
    salinity: 35.1,
    testEveryDays: 3,
  },
];

/** Fills a member's keep with one tank and a year of readings and additions that end at `nowMs`. */
export function fillTank(keep: Keep, tank: ClubTank, nowMs: number): void {
  const { id, netVolumeL } = keep.addTank(tank.profile);
  const chance = sequence(tank.profile.netVolumeL);
  const scatter = (size: number): number => (chance() - 0.5) * 2 * size;
  const { kept, usePerDay } = tank.alkalinity;
  let alkalinity = kept;
  for (let day = 0; day < DAYS; day += tank.testEveryDays) {
    const atMs = nowMs - (DAYS - day) * DAY_MS;
    const growth = 1 + (0.3 * day) / DAYS;
    alkalinity -= tank.testEveryDays * usePerDay * growth;
    const values: LoggedValue[] = [
      { parameter: 'alkalinity', value: round(alkalinity + scatter(0.15), 1) },
      { parameter: 'salinity', value: round(tank.salinity + scatter(0.4), 1) },
      { parameter: 'temperature', value: round(25.5 + scatter(0.5), 1) },
    ];
    if (day % (tank.testEveryDays * 2) === 0) {
      values.push(
        { parameter: 'calcium', value: Math.round(tank.calcium + scatter(12)) },
        { parameter: 'nitrate', value: round(Math.max(0, tank.nitrate * growth + scatter(2)), 1) },
        { parameter: 'phosphate', value: round(Math.max(0, tank.phosphate + scatter(0.02)), 3) },
      );
    }
    if (day % (tank.testEveryDays * 6) === 0)
      values.push({ parameter: 'magnesium', value: Math.round(tank.magnesium + scatter(30)) });
    keep.addEntry(id, { atMs, values });
    const rise = round(kept - alkalinity, 1);
    if (rise < 0.4) continue;
    const massG = round(rise * netVolumeL * SODA_ASH_G, 1);
    keep.addAddition(id, {
      atMs: atMs + HOUR_MS,
      parameter: 'alkalinity',
      rise,
      compound: 'sodium carbonate',
      massG,
    });
    alkalinity += rise;
  }
}

function round(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}

/** The same numbers from 0 to 1 on every run (linear congruential generator, Numerical Recipes constants from memory). */
function sequence(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
