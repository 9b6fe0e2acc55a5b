import { describe, expect, it } from 'vitest';
import { twoPersons } from '../coral/person.ts';
import { textOf } from '../text.ts';

/** Plane geometry: the inside is the outside less the panes; 36 in = 91.44 cm. */
describe('the inside of the glass', () => {
  it.each([
    ['size:120 x 50 x 50 cm measured:outside glass:12 mm height:46 cm', [117.6, 47.6, 46]],
    ['size:36 x 18 x 18 in measured:inside', [91.44, 45.72, 42.72]],
    ['size:60 x 60 cm measured:inside shape:cylinder', [60, 60, 57]],
    ['size:120 x 40 x 50 x 60 cm measured:inside shape:bow front height:50 cm', [120, 50, 50]],
    ['size:60 x 50 cm measured:inside shape:quarter round height:45 cm', [60, 60, 45]],
    ['size:90 x 40 x 60 cm measured:inside shape:corner pentagon height:50 cm', [90, 90, 50]],
  ])('of %s', (options, sides) => {
    const [{ keep, say }] = twoPersons();
    const text = textOf(say(`/tank new name:New ${options}`));
    const id = keep.tanks()[1]?.id ?? 0;
    const { lengthCm, widthCm, heightCm } = keep.glass(id).box ?? expect.unreachable();
    for (const [i, side] of [lengthCm, widthCm, heightCm].entries())
      expect(side).toBeCloseTo(sides[i] ?? 0, 9);
    expect(/taken as the box round it/.test(text)).toBe(options.includes('shape:'));
  });

  it('is not known from a volume alone, and shown as that', () => {
    const [{ keep, say }] = twoPersons();
    say('/tank new name:New volume:100 L flow:right to left');
    expect(keep.glass(keep.tanks()[1]?.id ?? 0)).toEqual({ box: undefined, flow: 'right to left' });
    const text = textOf(say('/tank show tank:New'));
    expect(text).toMatch(/inside of the glass: not known/);
    expect(text).toMatch(/flow: right to left/);
  });

  it('stays when something else is changed', () => {
    const [{ keep, say }] = twoPersons();
    const { box } = keep.glass(1);
    say('/tank edit flow:changing');
    say('/tank edit kind:soft');
    say('/tank edit volume:230 L');
    expect(keep.glass(1)).toEqual({ box, flow: 'changing' });
    expect(textOf(say('/tank show'))).toMatch(/inside of the glass: 120 x 50 x 46 cm to the water line/);
  });
});

describe('a new glass', () => {
  it('moves corals placed in words with the words, and tells of those left outside', () => {
    const [{ keep, say }] = twoPersons();
    say('/coral add coral:torch at:right, back, middle rock size:8 cm');
    say('/coral add coral:zoas at:100 x 20 x 20 cm size:4 cm');
    const given = say('/tank edit size:60 x 40 x 43 cm measured:inside height:40 cm');
    expect(
      keep.corals(1).map(({ spot }) => [spot.xCm, spot.yCm, spot.zCm].map((cm) => Number(cm.toFixed(6)))),
    ).toEqual([
      [50, 33.333333, 20],
      [100, 20, 20],
    ]);
    expect(given.cautions).toContain(
      'In this glass some corals would stand outside: 2. Say where they are with /coral move.',
    );
  });
});
