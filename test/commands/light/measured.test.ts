import { describe, expect, it } from 'vitest';
import { NOW_MS, run, twoPersons } from '../coral/person.ts';
import { rendered } from '../coral/rendered.ts';
import { problemOf, textOf } from '../text.ts';

describe('readings of a tank', () => {
  it('are kept, listed and taken out again', () => {
    const [ada, bea] = twoPersons();
    expect(ada.say('/light measured').headline).toMatch(/no light readings yet/);
    expect(ada.say('/light measured at:left, back, low par:120').headline).toMatch(
      /^120 PAR is kept as reading 1 of Pantry/,
    );
    expect(ada.keep.lightPoints(1)).toMatchObject([
      { ppfd: 120, atMs: NOW_MS, spot: { xCm: 20, zCm: 11.5 } },
    ]);
    expect(bea.say('/light measured').headline).toMatch(/no light readings yet/);
    const list = ada.say('/light measured');
    expect(list.table?.rows[0]?.slice(0, 2)).toEqual(['1', '120']);
    expect(list.table?.rows[0]?.at(-1)).toBe('2026-05-05');
    expect(problemOf(() => bea.say('/light measured remove:1')).message).toMatch(
      /no light reading of that number/,
    );
    const gone = ada.say('/light measured remove:1');
    expect(ada.keep.lightPoints(1)).toEqual([]);
    const [back] = gone.next;
    run(ada.keep, back?.command ?? '', back?.input ?? {});
    expect(ada.keep.lightPoints(1)).toMatchObject([{ ppfd: 120 }]);
  });

  it('can be several at once, in the same order', () => {
    const [ada] = twoPersons();
    const given = ada.say('/light measured at:left, back, sand; left, back, high par:80; 220');
    expect(given.headline).toMatch(/^2 readings are kept/);
    expect(ada.keep.lightPoints(1).map(({ ppfd, spot }) => [ppfd, spot.zCm])).toEqual([
      [80, 0],
      [220, 34.5],
    ]);
    ada.say('/light measured at:left, front, sand; right, front, sand par:70, 75');
    expect(ada.keep.lightPoints(1)).toHaveLength(4);
  });

  it.each([
    ['/light measured at:left, back, low', 'par'],
    ['/light measured par:120', 'at'],
    ['/light measured at:left, back, low par:120; 130', 'par'],
    ['/light measured at:left, back, low par:5000', 'par'],
    ['/light measured at:left, low par:100', 'at'],
    ['/light measured remove:zwei', 'remove'],
  ])('%s asks for what is missing', (line, field) => {
    const [ada] = twoPersons();
    expect(problemOf(() => ada.say(line)).field).toBe(field);
    expect(ada.keep.lightPoints(1)).toEqual([]);
  });
});

describe('what a reading changes', () => {
  it('is told of each coral whose light is judged otherwise', () => {
    const [ada] = twoPersons();
    ada.say('/coral add coral:torch at:20 x 40 x 10 cm size:8 cm');
    ada.say('/coral add coral:zoas at:100 x 10 x 10 cm size:4 cm');
    const dark = ada.say('/light measured');
    expect(textOf(dark)).not.toMatch(/Torch/);
    const bright = ada.say('/light measured at:20 x 40 x 10 cm par:320');
    expect(bright.headline).toMatch(/the light verdict changes for one coral/);
    expect(bright.facts).toMatchObject([
      { label: 'Torch coral (1)', verdict: 'move', value: /^Too bright: 320 PAR, 120 PAR over the 200 PAR/ },
    ]);
    expect(ada.say('/light measured at:21 x 40 x 10 cm par:319').headline).toMatch(
      /no coral's light verdict changes/,
    );
    expect(textOf(ada.say('/light measured'))).toMatch(/corals with no reading within 30 cm: Zoas/);
    ada.say('/light measured remove:2');
    expect(textOf(ada.say('/light measured remove:1'))).toMatch(/Before: too bright/);
  });

  it('the newest of one spot counts', () => {
    const [ada] = twoPersons();
    ada.say('/coral add coral:torch at:20 x 40 x 10 cm size:8 cm');
    ada.say('/light measured at:20 x 40 x 10 cm par:320');
    expect(ada.say('/light measured at:20 x 40 x 10 cm par:120').facts).toMatchObject([
      { verdict: 'settled' },
    ]);
  });
});

it('a full list fits a message', () => {
  const [ada] = twoPersons();
  for (let x = 0; x < 200; x++)
    ada.keep.addLightPoints(1, [{ spot: { xCm: x / 2, yCm: 20, zCm: 12.5 }, ppfd: 100 + x, atMs: NOW_MS }]);
  const { issues, text } = rendered(ada.say('/light measured'));
  expect(issues).toEqual([]);
  expect(text).toMatch(/200 light readings/);
});
