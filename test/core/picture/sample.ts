import type { TrendPanel, TrendPicture } from '../../../core/picture/trend-data.ts';
import { MS_PER_DAY, pointsFrom } from '../../../core/trend/dated.ts';
import { judgeTrend } from '../../../core/trend/judge.ts';
import { theilSen } from '../../../core/trend/robust.ts';
import { perFor, trendWords } from '../../../core/trend/words.ts';
import { parameter, type ParameterId } from '../../../core/water/parameter.ts';
import { targetFor } from '../../../core/water/targets.ts';

/** Noon of 3 January 2026. */
export const START_MS = Date.UTC(2026, 0, 3, 12);

/** Numbers from 0 to 1 that are always the same. */
export function steadyChance(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 16_807) % 2_147_483_647) / 2_147_483_647;
}

export interface SampleOptions {
  readonly count?: number;
  readonly days?: number;
  readonly additions?: number;
  readonly extra?: Partial<TrendPanel>;
}

/** A panel of invented readings about the middle of the target, slowly falling. */
export function samplePanel(id: ParameterId, options: SampleOptions = {}): TrendPanel {
  const { count = 14, days = 60, additions = 0, extra = {} } = options;
  const { label, unit, decimals, kitResolution: resolution } = parameter(id);
  const [low, high] = targetFor('mixed', id).range;
  const chance = steadyChance(label.length * 977 + count);
  const size = Math.max(high - low, resolution);
  const readings = Array.from({ length: count }, (_, i) => ({
    atMs: START_MS + ((days * i) / Math.max(1, count - 1)) * MS_PER_DAY,
    value: Math.max(0, low + size * (0.7 - (0.4 * i) / count + 0.25 * (chance() - 0.5))),
  }));
  const line = theilSen(pointsFrom(START_MS, extra.readings ?? readings));
  const words = line && trendWords(judgeTrend(line, days, resolution), perFor(days), '');
  return {
    label: label === 'pH' ? label : label.charAt(0).toUpperCase() + label.slice(1),
    unit,
    decimals,
    resolution,
    readings,
    additions: Array.from({ length: additions }, (_, i) => ({
      atMs: START_MS + ((days * (i + 0.5)) / additions) * MS_PER_DAY,
      rise: resolution,
    })),
    target: [low, high],
    trend: line === undefined || words === undefined ? undefined : { line, words },
    ringedMs: [],
    alerts: [],
    ...extra,
  };
}

export function samplePicture(
  panels: readonly TrendPanel[],
  title = 'Pantry tank, last 60 days',
): TrendPicture {
  return { title, zone: 'UTC', panels };
}
