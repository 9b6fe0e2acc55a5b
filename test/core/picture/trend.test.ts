import { describe, expect, it } from 'vitest';
import { altText, MOST_ALT } from '../../../core/picture/alt.ts';
import { palette } from '../../../core/picture/palette.ts';
import { trendSvg, WIDTH } from '../../../core/picture/trend.ts';
import { valueScale } from '../../../core/picture/value-scale.ts';
import { MS_PER_DAY } from '../../../core/trend/dated.ts';
import type { ParameterId } from '../../../core/water/parameter.ts';
import { samplePanel, samplePicture, START_MS } from './sample.ts';

const six: readonly ParameterId[] = [
  'alkalinity',
  'calcium',
  'magnesium',
  'nitrate',
  'phosphate',
  'salinity',
];

/** All of one element: its attributes as written. */
function all(svg: string, name: string): string[] {
  return [...svg.matchAll(new RegExp(`<${name}\\b([^>]*)>`, 'g'))].map(([, attributes = '']) => attributes);
}

function number(attributes: string, name: string): number {
  return Number(new RegExp(`\\b${name}="([-\\d.]+)"`).exec(attributes)?.[1] ?? Number.NaN);
}

/** The dots of readings, without the ones of the legend. */
function dots(svg: string): string[] {
  return all(svg, 'circle')
    .filter((each) => each.includes(`fill="${palette.reading}"`))
    .slice(0, -1);
}

describe('trendSvg', () => {
  it('puts each reading where its time and value are', () => {
    const readings = [0, 1, 3].map((day, i) => ({ atMs: START_MS + day * MS_PER_DAY, value: 8 + i / 2 }));
    const svg = trendSvg(samplePicture([samplePanel('alkalinity', { extra: { readings } })]));
    const [x = [], y = []] = [
      dots(svg).map((dot) => number(dot, 'cx')),
      dots(svg).map((dot) => number(dot, 'cy')),
    ];
    expect(x).toHaveLength(3);
    expect(((x[1] ?? 0) - (x[0] ?? 0)) / ((x[2] ?? 0) - (x[0] ?? 0))).toBeCloseTo(1 / 3, 3);
    expect(((y[0] ?? 0) - (y[1] ?? 0)) / ((y[0] ?? 0) - (y[2] ?? 0))).toBeCloseTo(1 / 2, 3);
    expect(y[0]).toBeGreaterThan(y[2] ?? 0);
  });

  it.each([1, 2, 4, 6])('%i panels: every one has its frame, name and dots', (count) => {
    const svg = trendSvg(samplePicture(six.slice(0, count).map((id) => samplePanel(id))));
    expect(all(svg, 'clipPath')).toHaveLength(count);
    expect(dots(svg)).toHaveLength(14 * count);
    for (const name of ['Alkalinity, dKH', 'Calcium, mg/L', 'Magnesium, mg/L', 'Nitrate, mg/L'].slice(
      0,
      count,
    )) {
      expect(svg).toContain(`>${name}<`);
    }
  });

  it('is no number and reads at phone width: every word 24 or more of 900', () => {
    const svg = trendSvg(samplePicture(six.map((id) => samplePanel(id, { count: 400, additions: 60 }))));
    expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
    expect(number(svg, 'width')).toBe(WIDTH);
    for (const text of all(svg, 'text')) expect(number(text, 'font-size')).toBeGreaterThanOrEqual(24);
  });

  it.each([
    { what: 'one reading', panel: samplePanel('ammonia', { count: 1, extra: { trend: undefined } }) },
    {
      what: 'no scatter at all',
      panel: samplePanel('ph', {
        extra: { readings: [0, 1, 2].map((i) => ({ atMs: START_MS + i, value: 8 })) },
      }),
    },
    {
      what: 'a value out of this world',
      panel: samplePanel('calcium', {
        extra: { readings: [0, 1].map((i) => ({ atMs: START_MS + i * MS_PER_DAY, value: 1e9 * i })) },
      }),
    },
    { what: 'no unit, no target', panel: samplePanel('ph', { extra: { target: undefined } }) },
    { what: 'a thousand additions', panel: samplePanel('alkalinity', { additions: 1000 }) },
  ])('draws $what', ({ panel }) => {
    const svg = trendSvg(samplePicture([panel]));
    expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
    expect(dots(svg)).toHaveLength(panel.readings.length);
  });

  it('marks additions and fast moves by shape, and names only what it shows', () => {
    const plain = trendSvg(samplePicture([samplePanel('alkalinity')]));
    const marked = trendSvg(
      samplePicture([samplePanel('alkalinity', { additions: 5, extra: { ringedMs: [START_MS] } })]),
    );
    expect(all(plain, 'polygon')).toHaveLength(0);
    expect(plain).not.toMatch(/>addition<|>moved fast</);
    expect(all(marked, 'polygon')).toHaveLength(5 + 1);
    expect(all(marked, 'circle').filter((each) => each.includes(palette.alert))).toHaveLength(1 + 1);
    expect(marked).toMatch(/>moved fast<.*>addition</s);
  });

  it('takes hostile names as words', () => {
    const title = `</text><script>alert("1")</script>&\u0000\u202e`;
    const svg = trendSvg(samplePicture([samplePanel('alkalinity')], title));
    expect(svg).not.toContain('<script');
    expect(svg).toContain('&lt;/text&gt;&lt;script&gt;');
  });

  it('dates are those of the zone', () => {
    const panel = samplePanel('alkalinity', {
      extra: { readings: [{ atMs: Date.UTC(2026, 0, 3, 23), value: 8 }] },
    });
    expect(trendSvg({ title: 'x', zone: 'UTC', panels: [panel] })).toContain('on 3 Jan');
    expect(trendSvg({ title: 'x', zone: 'Europe/Berlin', panels: [panel] })).toContain('on 4 Jan');
  });

  it.each([0, 7])('%i panels are a bug', (count) => {
    const panels = Array.from({ length: count }, () => samplePanel('ph'));
    expect(() => trendSvg(samplePicture(panels))).toThrow(/panels/);
  });
});

/** What is in view of readings a day apart. */
function view(values: readonly number[], target: readonly [number, number]) {
  const readings = values.map((value, i) => ({ atMs: START_MS + i * MS_PER_DAY, value }));
  const { y, targetAside } = valueScale(samplePanel('alkalinity', { extra: { readings, target } }), 0, 300);
  return { low: y.domain()[0] ?? 0, high: y.domain()[1] ?? 0, targetAside };
}

describe('valueScale', () => {
  it('shows the target where it is near', () => {
    const { low, high, targetAside } = view([8, 8.5, 9], [7, 10]);
    expect(low).toBeLessThan(7);
    expect(high).toBeGreaterThan(10);
    expect(targetAside).toBeUndefined();
  });

  it('leaves out the edge that would squeeze the readings', () => {
    const { low, high, targetAside } = view([8, 8.5, 9], [7, 20]);
    expect(low).toBeLessThan(7);
    expect(high).toBeLessThan(10);
    expect(targetAside).toBeUndefined();
  });

  it('names a far target instead of flattening the readings', () => {
    expect(view([20, 21], [7, 9])).toMatchObject({ targetAside: 'below' });
    expect(view([3, 3.5], [9, 11])).toMatchObject({ targetAside: 'above' });
    expect(view([20, 21], [7, 9]).low).toBeGreaterThan(15);
  });

  it('does not magnify one step of the kit', () => {
    const { low, high } = view([8, 8.05], [8, 8.1]);
    expect(high - low).toBeGreaterThan(4 * 0.3);
  });

  it('does not go below nothing', () => expect(view([0, 0.1], [0, 0.2]).low).toBe(0));
});

describe('altText', () => {
  it('says what the picture says', () => {
    const readings = [8.4, 8.1, 7.8].map((value, i) => ({ atMs: START_MS + i * 7 * MS_PER_DAY, value }));
    const panel = samplePanel('alkalinity', {
      additions: 3,
      extra: {
        readings,
        target: [7, 9],
        trend: { ...must(samplePanel('alkalinity').trend), words: 'falling 0.3 a week (0.1 to 0.5)' },
        alerts: ['Alkalinity moved fast.'],
      },
    });
    expect(altText(samplePicture([panel], 'Pantry'))).toBe(
      'Pantry. Alkalinity, dKH: 3 readings, 3 Jan to 17 Jan 2026; 7.8 to 8.4, latest 7.8; ' +
        'falling 0.3 a week (0.1 to 0.5); target 7 to 9; 3 additions. Alkalinity moved fast.',
    );
  });

  it('six parameters with long alerts stay within what a platform takes', () => {
    const alerts = Array.from({ length: 5 }, () => 'Alkalinity rose by more than is usual in a day.');
    const panels = six.map((id) => samplePanel(id, { additions: 40, extra: { alerts } }));
    const alt = altText(samplePicture(panels, 'T'.repeat(100)));
    expect(alt.length).toBeLessThanOrEqual(MOST_ALT);
    expect(alt).toContain('Alerts: 5.');
    expect(alt).toContain('Salinity, ppt: 14 readings');
  });
});

function must<T>(value: T | undefined): T {
  if (value === undefined) throw new Error('missing');
  return value;
}
