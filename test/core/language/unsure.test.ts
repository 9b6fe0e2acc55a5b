import { assert, constantFrom, nat, property, string } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { framesOf, type Frame } from '../../../core/language/frame.ts';
import { ofNames, partNames } from '../../../core/language/parts.ts';
import type { Reading } from '../../../core/language/reading.ts';
import { choiceText, unsureIn, withChoices } from '../../../core/language/unsure.ts';
import { saidOf } from './said-of.ts';

/** "alk 7.2 want 8.4 in 75 gal 20 litres", where the last volume may be the whole tank's or what is changed. */
function reading(): Reading {
  const { scanned, said } = saidOf(
    'alk 7.2 want 8.4 in 75 gal 20 litres, lamp at 60 %',
    ['now', 'alkalinity'],
    ['wanted', 'alkalinity'],
    ['system', 'nothing'],
    ['changed', 'water'],
    ['setting', 'light'],
  );
  return {
    given: scanned.text,
    scanned,
    said,
    kinds: [{ name: 'dose-amount', probability: 1 }],
    cards: () => [],
  };
}

function frameWith(at: number, part: 'part' | 'none', of: 'container' | 'nothing'): Frame {
  const whole = reading();
  const said = whole.said.map((one, n) => (n === at ? { ...one, perhaps: { part, of } } : one));
  const [frame] = framesOf({ ...whole, said });
  if (frame === undefined) throw new Error('no frame');
  return frame;
}

describe('a number whose part hangs in the balance', () => {
  it('is asked about where the answer rests on it', () =>
    expect(unsureIn(frameWith(3, 'part', 'container'), ['volume', 'changed'])).toEqual({
      at: 3,
      text: '20 litres',
      choices: [
        { part: 'changed', of: 'water' },
        { part: 'part', of: 'container' },
      ],
    }));

  it('is left alone where the answer does not', () => {
    expect(unsureIn(frameWith(3, 'part', 'container'), ['now', 'wanted'])).toBeUndefined();
    expect(unsureIn(frameWith(4, 'none', 'nothing'), ['now', 'wanted', 'volume'])).toBeUndefined();
  });

  it('is what a button says it is, and is not asked about again', () => {
    const chosen = choiceText(3, { part: 'part', of: 'container' });
    const after = withChoices(frameWith(3, 'none', 'nothing').reading, chosen);
    expect(after.said[3]).toMatchObject({ part: 'part', of: 'container', probability: 1 });
    expect(after.said[3]?.perhaps).toBeUndefined();
    expect(after.chosen).toBe(chosen);
  });

  it('comes back from the text of a button', () => {
    assert(
      property(nat(4), constantFrom(...partNames), constantFrom(...ofNames), (at, part, of) => {
        const { said } = withChoices(reading(), choiceText(at, { part, of }));
        expect(said[at]).toMatchObject({ part, of });
      }),
    );
  });

  it('is not changed by what is no choice', () => {
    assert(
      property(string(), (text) => {
        expect(withChoices(reading(), text).said).toEqual(reading().said);
      }),
    );
  });
});
