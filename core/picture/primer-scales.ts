import { fixed } from '../quantity/format.ts';
import { calciumWithAlkalinity, meqLFromDkh } from '../water/alkalinity.ts';
import { MG_CACO3_PER_MEQ } from '../quantity/unit.ts';
import { conductivityMScm } from '../water/conductivity.ts';
import { specificGravity } from '../water/specific-gravity.ts';
import { palette } from './palette.ts';
import { framed, label, LEFT, RIGHT, rule, type PrimerPicture } from './primer-frame.ts';
import { tag } from './svg.ts';

interface Scale {
  readonly name: string;
  readonly of: (value: number) => number;
  readonly decimals: number;
}

interface Scales {
  readonly title: string;
  readonly values: readonly number[];
  readonly scales: readonly Scale[];
  /** The range shaded, with its word. */
  readonly usual?: readonly [low: number, high: number, word: string];
}

const ROW = 92;
const TOP = 76;

/** One value on several scales: equal places mean the same water. */
function scales({ title, values, scales: rows, usual }: Scales): PrimerPicture {
  const [first = 0, last = 1] = [values[0], values.at(-1)];
  const x = (value: number): number => 62 + ((value - first) / (last - first)) * (RIGHT - 40 - 62);
  const height = TOP + rows.length * ROW + (usual === undefined ? 16 : 44);
  const bottom = TOP + rows.length * ROW;
  const shade =
    usual === undefined
      ? ''
      : tag('rect', {
          x: x(usual[0]),
          y: TOP - 8,
          width: x(usual[1]) - x(usual[0]),
          height: bottom - TOP,
          fill: palette.target,
        }) +
        label(usual[2], {
          x: (x(usual[0]) + x(usual[1])) / 2,
          y: bottom + 22,
          anchor: 'middle',
          fill: palette.quietInk,
        });
  const drawn = rows.map((row, index) => {
    const y = TOP + index * ROW + 26;
    return [
      label(row.name, { x: LEFT, y: y - 4, fill: palette.reading }),
      rule(x(first), y + 14, x(last), y + 14, palette.ink, 3),
      ...values.map((value) => rule(x(value), y + 6, x(value), y + 22, palette.ink, 3)),
      ...values.map((value) =>
        label(fixed(row.of(value), row.decimals), { x: x(value), y: y + 48, anchor: 'middle' }),
      ),
    ].join('');
  });
  const same = values.map((value) =>
    rows.map((row) => `${fixed(row.of(value), row.decimals)} ${row.name}`).join(' = '),
  );
  return {
    svg: framed(title, height, shade, ...drawn),
    alt: `${title}. ${same.join('; ')}.${usual === undefined ? '' : ` Shaded: ${usual[2]}, ${usual[0]} to ${usual[1]}.`}`,
  };
}

const meq = (dkh: number): number => meqLFromDkh(dkh);

/** Alkalinity in the three units keepers use. */
export function alkalinityUnits(): PrimerPicture {
  return scales({
    title: 'One alkalinity, three units',
    values: [6, 7, 8, 9, 10, 11, 12],
    scales: [
      { name: 'dKH', of: (dkh) => dkh, decimals: 0 },
      { name: 'meq/L', of: meq, decimals: 2 },
      { name: 'ppm as CaCO3', of: (dkh) => meq(dkh) * MG_CACO3_PER_MEQ, decimals: 0 },
    ],
    usual: [7, 11, 'usual range'],
  });
}

/** Salinity on the scales of three instruments at 25 °C. */
export function salinityScales(): PrimerPicture {
  return scales({
    title: 'One salinity, three instruments, 25 °C',
    values: [31, 32, 33, 34, 35, 36],
    scales: [
      { name: 'ppt', of: (s) => s, decimals: 0 },
      { name: 'specific gravity (25/25)', of: (s) => specificGravity(s, '25/25'), decimals: 4 },
      { name: 'mS/cm', of: (s) => conductivityMScm(s, 25), decimals: 1 },
    ],
    usual: [34, 36, 'stony corals'],
  });
}

/** What skeleton takes of both. */
export function calciumBesideAlkalinity(): PrimerPicture {
  return scales({
    title: 'Used together in coral skeleton',
    values: [0, 1, 2, 3, 4, 5],
    scales: [
      { name: 'dKH of alkalinity', of: (dkh) => dkh, decimals: 0 },
      { name: 'mg/L of calcium', of: (dkh) => calciumWithAlkalinity(meq(dkh)), decimals: 0 },
    ],
  });
}
