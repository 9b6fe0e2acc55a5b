import { describe, expect, it } from 'vitest';
import { foreignAnswer } from '../../../commands/ask/foreign.ts';
import { foreignWords } from '../../../commands/ask/foreign-words.ts';
import { commands } from '../../../commands/index.ts';
import { nameOf } from '../../../commands/named.ts';
import { tongueOf } from '../../../core/language/tongue/tongue-of.ts';
import type { Unread } from '../../../core/language/tongue/tongues.ts';
import { hostileSample } from '../../hostile.ts';
import { textOf } from '../text.ts';
import { fastestMs } from '../../fastest.ts';

const all = Object.keys(foreignWords) as Unread[];
const message =
  'KH 5,8 Calcium 380 mg/l Dichte 1,022 NO3 40 in meinem 200 Liter Becken, alles stirbt, Ammonium 2';

describe.each(all)('%s', (tongue) => {
  const given = foreignAnswer(message, tongue);

  it('says first that only English is read, then what to do where somebody is hurt', () => {
    expect(given.headline).toBe(foreignWords[tongue].reads);
    expect(given.steps).toEqual([foreignWords[tongue].emergency]);
  });

  it('has the two buttons for emergencies before everything', () =>
    expect(given.next.slice(0, 2).map(({ command, input }) => ({ command, input }))).toEqual([
      { command: 'urgent', input: { what: 'person hurt' } },
      { command: 'urgent', input: {} },
    ]));

  it('has labels that fit on a button, in one row', () => {
    expect(given.next.length).toBeLessThanOrEqual(5);
    for (const { label } of given.next) expect(label.length).toBeLessThanOrEqual(80);
  });

  it('says nothing of how the readings stand', () => {
    expect(textOf(given)).not.toMatch(/\b(?:fine|ok(?:ay)?|normal|good|usual|low|high|safe)\b/i);
    expect(given.facts).toEqual([]);
  });

  it('is in that language itself', () => {
    const { reads, emergency } = foreignWords[tongue];
    expect(tongueOf(`${reads} ${emergency}`).tongue).toBe(tongue === 'other' ? 'english' : tongue);
  });
});

describe('what it could do with the numbers', () => {
  it('is offered with the readings filled in', () =>
    expect(foreignAnswer(message, 'german').next.slice(2)).toEqual([
      {
        label: 'Dosierung / Dose: alkalinity now 5.8 dKH, 200 L',
        command: 'dose amount',
        input: { of: 'alkalinity', now: '5.8 dKH', volume: '200 L' },
        ask: ['goal', 'with'],
      },
      {
        label: 'Dosierung / Dose: calcium now 380 mg/L, 200 L',
        command: 'dose amount',
        input: { of: 'calcium', now: '380 mg/L', volume: '200 L' },
        ask: ['goal', 'with'],
      },
      {
        label: 'Salzgehalt umrechnen / Every scale: 1.022',
        command: 'salinity convert',
        input: { reading: '1.022' },
      },
    ]));

  // Stoichiometry: 1 dKH is 0.35665 meq/L, sodium carbonate 52.99 g a mole of charge (IUPAC 2021): 2.2 dKH in 200 L
  // are 8.316 g; it is printed rounded down.
  it('is worked out by the command once the goal is filled in', () => {
    const [dose] = foreignAnswer('kh 5,8 und 200 Liter', 'german').next.slice(2);
    const command = commands.find((each) => nameOf(each) === dose?.command);
    const filled = { ...dose?.input, goal: '8 dKH', with: 'sodium carbonate' };
    const { headline = '' } = command?.run(filled, { nowMs: 0 }) ?? {};
    expect(headline).toMatch(/ g of sodium carbonate in all.* in 200 L\.$/);
    expect(2.2 * 0.35665 * 200 * 52.99e-3 - Number.parseFloat(headline)).toBeGreaterThanOrEqual(0);
    expect(2.2 * 0.35665 * 200 * 52.99e-3 - Number.parseFloat(headline)).toBeLessThan(0.01);
  });

  it('is nothing where a number has no name', () =>
    expect(foreignAnswer('Ich habe 3 Fische und 5 Steine', 'german').next).toHaveLength(2));

  it('names what was not used', () =>
    expect(foreignAnswer('KH auf 5,8 gefallen', 'german').unused).toContain('"5,8"'));
});

describe('hostile text', () => {
  it('is answered, whatever it is', () => {
    for (const text of hostileSample(11, 2000)) {
      const { tongue } = tongueOf(text);
      expect(foreignAnswer(text, tongue === 'english' ? 'other' : tongue).next.length).toBeGreaterThan(1);
    }
  });

  it.each(['kh 99 ', 'kh ', '5 ', 'kh 5,8 ', 'nitrat 4 a 5 ', '1,', 'ph', '°', 'ca 4', 'salinität 35 g '])(
    'of 4,000 characters "%s" takes less than 20 ms',
    (part) => {
      const text = part.repeat(4000).slice(0, 4000);
      expect(fastestMs(() => foreignAnswer(text, 'german'))).toBeLessThan(20);
    },
  );
});
