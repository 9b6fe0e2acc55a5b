import { fixed } from '../quantity/format.ts';
import { rangeText, wallMs } from './dates.ts';
import { aimText } from './panel.ts';
import type { TrendPanel, TrendPicture } from './trend-data.ts';

/** The longest alt text a platform takes, characters. */
export const MOST_ALT = 1024;

/**
 * What a trend picture says, in words: for each parameter its readings, their range, the latest, the trend with its
 * uncertainty, the target, the additions and the alerts. At most `MOST_ALT` characters; alerts shrink to their number first.
 */
export function altText(picture: TrendPicture): string {
  const whole = written(picture, ({ alerts }) => alerts.join(' '));
  if (whole.length <= MOST_ALT) return whole;
  const short = written(picture, ({ alerts }) => (alerts.length === 0 ? '' : `Alerts: ${alerts.length}.`));
  return short.length <= MOST_ALT ? short : `${short.slice(0, MOST_ALT - 1).replace(/\p{Cs}$/u, '')}…`;
}

function written({ title, zone, panels }: TrendPicture, alertsOf: (panel: TrendPanel) => string): string {
  const parts = panels.flatMap((panel) => [panelText(panel, zone), alertsOf(panel)]);
  return [`${title}.`, ...parts].filter((part) => part !== '').join(' ');
}

function panelText(panel: TrendPanel, zone: string): string {
  const { label, unit, decimals, readings, target, trend, additions } = panel;
  const values = readings.map(({ value }) => value);
  const [first, last] = [readings[0], readings.at(-1)];
  if (first === undefined || last === undefined) throw new Error(`no reading of ${label}`);
  const lowest = values.reduce((a, b) => Math.min(a, b));
  const highest = values.reduce((a, b) => Math.max(a, b));
  const number = (value: number): string => fixed(value, decimals);
  const [from, to] = [wallMs(first.atMs, zone), wallMs(last.atMs, zone)];
  const count = readings.length === 1 ? '1 reading' : `${readings.length} readings`;
  return (
    [
      `${label}${unit === '' ? '' : `, ${unit}`}: ${count}, ${rangeText(from, to)}`,
      readings.length === 1
        ? number(last.value)
        : `${number(lowest)} to ${number(highest)}, latest ${number(last.value)}`,
      ...(trend === undefined ? [] : [trend.words]),
      ...(target === undefined ? [] : [`target ${aimText(target, decimals)}`]),
      ...(additions.length === 0
        ? []
        : [`${additions.length === 1 ? '1 addition' : `${additions.length} additions`}`]),
    ].join('; ') + '.'
  );
}
