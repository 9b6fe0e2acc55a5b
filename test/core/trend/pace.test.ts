import { describe, expect, it } from 'vitest';
import { MS_PER_DAY } from '../../../core/trend/dated.ts';
import { fastMoves } from '../../../core/trend/pace.ts';
import { parameter, type ParameterId } from '../../../core/water/parameter.ts';
import { limitsOf, type Pace } from '../../../core/water/limits.ts';

const paceOf = (id: ParameterId): Pace => limitsOf(id).pace ?? expect.unreachable(id);
const moves = (...rows: readonly (readonly [day: number, value: number])[]) =>
  fastMoves(
    rows.map(([day, value]) => ({ atMs: day * MS_PER_DAY, value })),
    paceOf('alkalinity'),
    parameter('alkalinity').kitResolution,
  );

/** Phosphate 0.05 mg/L, and a day later another value. */
function afterADay(value: number) {
  return [
    { atMs: 0, value: 0.05 },
    { atMs: MS_PER_DAY, value },
  ];
}

describe('fastMoves, alkalinity: 1 dKH a day, kit 0.3 dKH (common practice, no source)', () => {
  it.each([
    {
      what: '1.0 in a day',
      rows: [
        [0, 8],
        [1, 9],
      ],
      expected: [],
    },
    {
      what: '1.5 up in a day',
      rows: [
        [0, 8],
        [1, 9.5],
      ],
      expected: [1.5],
    },
    {
      what: '1.5 down in a day',
      rows: [
        [0, 9.5],
        [1, 8],
      ],
      expected: [-1.5],
    },
    {
      what: '1.5 in two days',
      rows: [
        [0, 8],
        [2, 9.5],
      ],
      expected: [],
    },
    {
      what: '3 in two days',
      rows: [
        [0, 8],
        [2, 11],
      ],
      expected: [1.5],
    },
    {
      what: 'a retest of the same hour',
      rows: [
        [0, 8],
        [0.04, 8.3],
      ],
      expected: [],
    },
    {
      what: '1.5 in an hour, not 36 a day',
      rows: [
        [0, 8],
        [0.04, 9.5],
      ],
      expected: [1.5],
    },
    {
      what: 'steps of 0.8 that add up within a day',
      rows: [
        [0, 8],
        [0.3, 8.8],
        [0.6, 9.6],
      ],
      expected: [1.6],
    },
    {
      what: 'one at a time',
      rows: [
        [0, 8],
        [1, 10],
        [2, 8],
      ],
      expected: [2, -2],
    },
    { what: 'nothing', rows: [], expected: [] },
  ] as const)('$what', ({ rows, expected }) => {
    const found = moves(...rows).map(({ perDay }) => Math.round(perDay * 100) / 100);
    expect(found).toEqual(expected);
  });

  it('is sure only beyond the kit’s error', () => {
    expect(moves([0, 8], [1, 9.2])[0]?.sure).toBe(false);
    expect(moves([0, 8], [1, 9.4])[0]?.sure).toBe(true);
  });

  it('leaves out what the kit cannot tell: phosphate 0.02 a day, kit 0.03', () => {
    const { kitResolution } = parameter('phosphate');
    expect(fastMoves(afterADay(0.08), paceOf('phosphate'), kitResolution)).toEqual([]);
    expect(fastMoves(afterADay(0.09), paceOf('phosphate'), kitResolution)).toHaveLength(1);
  });
});
