import type { DatedRise, DatedValue } from '../trend/dated.ts';
import type { TrendLine } from '../trend/point.ts';

/** Most parameters one picture holds. */
export const MOST_PANELS = 6;

/** One parameter in a trend picture. Values in the parameter's own unit. */
export interface TrendPanel {
  readonly label: string;
  /** '' where there is none. */
  readonly unit: string;
  readonly decimals: number;
  /** What the instrument can tell apart; the value axis never magnifies less than a few steps of it. */
  readonly resolution: number;
  /** Oldest first, at least one. */
  readonly readings: readonly DatedValue[];
  readonly additions: readonly DatedRise[];
  readonly target: readonly [number, number] | undefined;
  /** The line in days since the first reading, and what it says in words. */
  readonly trend: { readonly line: TrendLine; readonly words: string } | undefined;
  /** Readings to ring, by instant. */
  readonly ringedMs: readonly number[];
  /** Sentences that go with the picture, for the alt text. */
  readonly alerts: readonly string[];
}

export interface TrendPicture {
  readonly title: string;
  /** IANA zone the dates are in. */
  readonly zone: string;
  /** 1 to `MOST_PANELS`. */
  readonly panels: readonly TrendPanel[];
}
