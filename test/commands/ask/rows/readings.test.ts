import { describe, expect, it } from 'vitest';
import { movedRows } from '../../../../commands/ask/rows/moved.ts';
import { overdoseRows } from '../../../../commands/ask/rows/overdose.ts';
import { readingRows } from '../../../../commands/ask/rows/readings.ts';
import { volumeRows } from '../../../../commands/ask/rows/volume.ts';
import type { Kind } from '../../../../core/language/kinds.ts';
import { twoPersons } from '../../coral/person.ts';
import { answered, asked, NOBODY, number, textOf } from './asked-row.ts';

const rows = [...readingRows, ...movedRows, ...overdoseRows, ...volumeRows];
const given = (kind: Kind, text: string) => answered(rows, kind, text);
const FINE = 'All of it is';

describe('readings, judged', () => {
  it('calls them fine only where all of it was used and nothing is wrong', () => {
    expect(given('readings-ok', 'is nitrate 12 ok').headline).toContain(FINE);
    const trouble = given('readings-ok', 'alk 8.1 ca 420 but my torch is closed and receding, fine?');
    expect(trouble.headline).not.toContain(FINE);
    expect(trouble.headline).toContain('closed');
    const unread = given('readings-ok', 'alk 8.1 ca 420, and 9 g of soda ash went in, ok?');
    expect(unread.headline).not.toContain(FINE);
  });

  it('is urgent where it is: no reef shows ammonia', () => {
    expect(given('readings-ok', 'ammonia 0.5 in my tank is that ok').headline).toMatch(/^Urgent: ammonia/);
  });

  it('judges by the aims of the tank in use', () => {
    const [{ keep }] = twoPersons();
    const read = answered(rows, 'readings-ok', 'is nitrate 12 ok', { ...NOBODY, keep }).read.join();
    expect(read).toContain('its own targets first');
  });

  it('without a number: where reefs are kept', () => {
    expect(given('readings-ok', 'what should my alkalinity be').headline).toContain('7 to 11 dKH');
    expect(asked(rows, 'readings-ok', 'is it all fine')).toContain('Which readings');
  });
});

// Bounds are common practice (core/water/limits.ts); 30 °C is 30 x 1.8 + 32 = 86 °F, 19.5 °C is 67.1 °F.
describe('at which level to act', () => {
  const BOUNDS = 'an emergency at 30 °C (86 °F) or higher, and at 19.5 °C (67.1 °F) or lower';
  it.each([
    [
      'It peaks at 26.9 most afternoons. At what temperature should I begin to lose sleep?',
      BOUNDS,
      '26.9 °C (80.4 °F) is in the usual range',
    ],
    [
      'when is salinity too low',
      'at 41 ppt or higher, and at 28 ppt or lower',
      'Between the two there is time',
    ],
    ['what ammonia number makes you run', 'usual none; an emergency at 0.25 mg/L or higher', ''],
    ['what magnesium is too high', 'no level is an emergency by itself', ''],
    ['at what point is alk of 6.2 an emergency', 'at 14 dKH or higher', '6.2 dKH is below the usual range'],
  ])('%s', (text, bounds, judged) => {
    const { headline } = given('readings-ok', text);
    expect(headline.replace(/^An emergency/, 'an emergency')).toContain(bounds);
    expect(headline).toContain(judged);
  });

  it('the level that was said first, where the line holds no more', () => {
    const { headline, facts } = given('readings-ok', 'what temp do I panic at, 27.5?');
    expect(headline).toBe('27.5 °C (81.5 °F) is above the usual range, and no emergency yet.');
    expect(facts.map(({ value }) => value).join()).toMatch(
      /30 °C \(86 °F\) or higher.*19\.5 °C \(67\.1 °F\) or lower/,
    );
  });

  it('why it is low, or whether it is fine, asks for no level', () => {
    expect(given('readings-ok', 'why is my salinity too low').headline).not.toContain('emergency');
    expect(given('readings-ok', 'is nitrate 12 ok').headline).not.toContain('emergency');
  });
});

describe('nutrients', () => {
  it('feeds before it doses at zero', () => {
    const zero = given('nutrients', 'nitrate 0 and phosphate 0, should I dose, 100 litres');
    expect(zero.headline).toMatch(/^Feed before you dose/);
    // NaNO3 84.99 over NO3 62.00 (IUPAC 2021).
    expect(number(textOf(zero), 'g of sodium nitrate')).toBeCloseTo(0.137, 1);
  });

  it('goes down by changes, and a carbon source by its label', () => {
    expect(given('nutrients', 'nitrate 40 want 10 with 20% a week').headline).toContain('7 changes of 20 %');
    expect(given('nutrients', 'how much vodka to dose for nitrate').headline).toContain('carbon source');
  });

  it('judges what is high, and has a card', () => {
    expect(given('nutrients', 'no3 40 po4 .2 too high what do I do').headline).toContain('nitrate high');
    expect(given('nutrients', 'where does all my nitrate come from').headline).toContain('never for zero');
  });
});

describe('a reading that moved', () => {
  it('tells what may have moved it, and the use where it fell in a known time', () => {
    const fell = given('moved', 'alk dropped from 9 to 7.5 in 3 days, nothing changed, why');
    expect(fell.headline).toContain('mostly use');
    expect(textOf(fell)).toContain('0.5 dKH a day');
    expect(given('moved', 'salinity creeping up, 1.025 last week and 1.027 now').headline).toContain(
      'evaporation',
    );
    expect(given('moved', 'ph 8.2 to 7.8 since we shut the windows').headline).toContain('closed room');
  });

  it('never doses towards the old value', () => {
    for (const text of ['alk dropped from 9 to 7.5 in 3 days', 'calcium went from 440 to 410, why']) {
      const { next, headline, steps } = given('moved', text);
      expect(next.map(({ command }) => command)).not.toContain('dose amount');
      expect([headline, ...steps].join()).not.toMatch(/\d g of/);
    }
  });

  it('may be no move at all: a kit tells 10 mg/L of calcium apart', () => {
    expect(given('moved', 'calcium went from 430 to 425 by itself').headline).toContain('may not have moved');
  });

  it('asks which', () => {
    expect(asked(rows, 'moved', 'it keeps going up by itself')).toContain('Which reading');
  });
});

describe('too much went in', () => {
  it('first aid, with the rise it made: 200 g of Na2CO3 in 283.9 L is 37.3 dKH', () => {
    const over = given('overdose', 'doser dumped 200 g of soda ash into 75 gal, alk reads 14 now');
    expect(over.headline).toMatch(/^Stop everything that adds it/);
    expect(number(textOf(over).split('raises alkalinity by')[1] ?? '', 'dKH')).toBeCloseTo(
      200 / 1.89 / 2.839,
      0,
    );
    expect(textOf(over)).toContain('alkalinity 14 dKH');
    expect(over.dangers.join()).toContain('People first');
  });

  it('names an amount that nobody can reckon with', () => {
    const over = given('overdose', 'gave 40 ml of the alk solution instead of 4, 60 gal');
    expect(over.headline).toMatch(/^Stop/);
    expect(textOf(over)).toContain('not used: amount "40 ml"');
  });
});

describe('the water of a box', () => {
  it('by its sides, and what takes away from it', () => {
    const box = given('volume', '120x50x50 cm how many litres');
    // 120 x 50 cm of floor; water 3 cm below a rim of 50 cm: common practice, no source.
    expect(number(box.headline, 'L')).toBeCloseTo((120 * 50 * 47) / 1000, 1);
    expect(box.working.join('\n')).toContain('300 L to the rim');
    expect(box.read).toContain('whether inside or outside the glass is not said: taken as inside');
    expect(textOf(box)).toContain('Rock');
    // 18 in cubed, an inch of 2.54 cm; the same 3 cm.
    const cube = given('volume', 'how many litres in an 18 inch cube').headline;
    expect(number(cube, 'L')).toBeCloseTo(((18 * 2.54) ** 2 * (18 * 2.54 - 3)) / 1000, 1);
  });

  it('takes sides in inches where gallons are asked for', () => {
    // 36 x 18 in of floor, an inch of 2.54 cm; the same 3 cm.
    const box = given('volume', '36 x 18 x 18 how many gallons');
    expect(number(box.headline, 'L')).toBeCloseTo((36 * 18 * 2.54 ** 2 * (18 * 2.54 - 3)) / 1000, 1);
    expect(box.working.join('\n')).toContain('36 x 18 x 18 in');
  });

  it('asks for the unit where none was said', () => {
    const box = given('volume', '36 x 18 x 18, how much water');
    expect(box.next.map(({ label }) => label)).toEqual(['In cm', 'In inches']);
  });
});
