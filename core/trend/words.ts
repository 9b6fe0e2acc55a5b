import type { JudgedTrend } from './judge.ts';

/** A slope is told by the week, and by the day where the readings span less than two weeks. */
export interface Per {
  readonly word: 'a day' | 'a week';
  readonly days: number;
}

export function perFor(spanDays: number): Per {
  return spanDays < 14 ? { word: 'a day', days: 1 } : { word: 'a week', days: 7 };
}

/**
 * A judged slope in words: "falling 0.21 dKH a week (0.15 to 0.30)" or "within error, −0.10 to +0.05 dKH a week".
 * `unit` may be ''. The figures are as fine as half the range's width deserves, and fine enough that an end is not
 * written as the 0 it leaves out.
 */
export function trendWords(judged: JudgedTrend, per: Per, unit: string): string {
  const link = judged.verdict === 'within error' ? ', ' : ' ';
  return `${judged.verdict}${link}${sizeWords(judged, per, unit)}`;
}

/** The size alone: "0.21 dKH a week (0.15 to 0.30)", or "−0.10 to +0.05 dKH a week" where it is within error. */
export function sizeWords(judged: JudgedTrend, per: Per, unit: string): string {
  const { range, verdict } = judged;
  const measure = `${unit} ${per.word}`.trim();
  const [low, high] = [range.low * per.days, range.high * per.days];
  const decimals = decimalsFor((high - low) / 2);
  if (verdict === 'within error') return `${signed(low, decimals)} to ${signed(high, decimals)} ${measure}`;
  const { best, from, to } = sizeFigures(judged, per);
  return `${best} ${measure} (${from} to ${to})`;
}

/** A size and its range without sign, all to the same digits, so that what is printed lies in the range printed. */
export function sizeFigures(
  { perDay, range }: Pick<JudgedTrend, 'perDay' | 'range'>,
  per: Per,
): { readonly best: string; readonly from: string; readonly to: string } {
  const ends = [Math.abs(range.low), Math.abs(range.high)].map((end) => end * per.days);
  const [least = 0, most = 0] = ends.sort((x, y) => x - y);
  const decimals = decimalsFor((Math.abs(range.high - range.low) * per.days) / 2);
  const enough = Number(least.toFixed(decimals)) === 0 ? decimalsFor(least) : decimals;
  const text = (value: number): string => value.toFixed(enough);
  return { best: text(Math.abs(perDay) * per.days), from: text(least), to: text(most) };
}

/** Decimals that show one figure of an error, two where the first is small: 0.075 -> 2, 1.2 -> 1, 35 -> 0. */
function decimalsFor(error: number): number {
  if (!(error > 0)) return 0;
  const magnitude = Math.floor(Math.log10(error));
  const figures = error / 10 ** magnitude < 3 ? 2 : 1;
  return Math.min(8, Math.max(0, figures - 1 - magnitude));
}

/** With the sign always written: "+0.20", "−0.15"; what rounds to nothing is "0". */
function signed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  if (Number(text) === 0) return '0';
  return `${value < 0 ? '−' : '+'}${text}`;
}
