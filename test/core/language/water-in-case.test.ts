import { describe, expect, it } from 'vitest';
import { noCase, withMoment, type Case } from '../../../core/language/case.ts';
import type { OfName, PartName } from '../../../core/language/parts.ts';
import type { Slots } from '../../../core/language/slots.ts';
import { withWater } from '../../../core/language/water-in-case.ts';
import { saidOf } from './said-of.ts';

function after(slots: Slots): Case {
  return withMoment(noCase, { atMs: 0, kind: 'told', slots }, '');
}

function readIn(before: Case, text: string, ...parts: readonly (readonly [PartName, OfName])[]) {
  const { scanned, said } = saidOf(text, ...parts);
  const reading = { given: text, scanned, said, kinds: [], cards: () => [] };
  return withWater(reading, before).said.map((one) => [one.part, one.text]);
}

describe('a volume in its case', () => {
  it('without a unit is in that of the tank told before', () =>
    expect(readIn(after({ volume: '40 gal' }), 'no, 30', ['system', 'nothing'])).toEqual([
      ['system', '30 gal'],
    ]));

  it('that is no size for the tank is a vessel', () =>
    expect(readIn(after({ volume: '300 l' }), 'the bottle has 2 l', ['system', 'nothing'])).toEqual([
      ['part', '2 l'],
    ]));

  it('is the tank where a tank is spoken of', () =>
    expect(readIn(after({ volume: '300 l' }), 'my nano tank has 20 l', ['system', 'nothing'])).toEqual([
      ['system', '20 l'],
    ]));

  it('in millilitres is an amount, and so is a bare one beside it', () =>
    expect(
      readIn(
        after({ volume: '300 l' }),
        '150 ml is left of 400',
        ['amount', 'substance'],
        ['system', 'nothing'],
      ),
    ).toEqual([
      ['amount', '150 ml'],
      ['amount', '400 ml'],
    ]));

  it('is as it was read where nothing was told', () =>
    expect(readIn(noCase, '20 l of mix', ['part', 'container'])).toEqual([['part', '20 l']]));
});
