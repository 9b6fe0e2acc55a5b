import { describe, expect, it } from 'vitest';
import { marksOf } from '../../../core/language/labelled.ts';
import { saidAs } from '../../../core/language/said.ts';
import { withoutTakenBack } from '../../../core/language/taken-back.ts';
import { scan } from '../../../core/language/tokens.ts';

/** What is left of a marked message. */
function left(marked: string): readonly string[] {
  const text = marked.replaceAll(/\[([^\]]*)\]\([^)]*\)/g, '$1');
  const scanned = scan(text);
  const marks = marksOf({ text, kind: 'off-topic', roles: marked }) ?? [];
  const said = scanned.numbers.map((number) => {
    const mark = marks.find(({ start, end }) => start <= number.start && number.start < end);
    return saidAs(mark?.part ?? 'none', mark?.of ?? 'nothing', number, 1);
  });
  return withoutTakenBack(scanned, said).map(({ text: kept }) => kept);
}

describe('numbers that are taken back', () => {
  it.each([
    ['its really [30 gal](system) of water not [50](system)', ['30 gal']],
    ['forget the [1180](now magnesium), fresh kit says [1240](now magnesium)', ['1240']],
    ['gave [4 ml](amount alkalinity) and not [40 ml](amount alkalinity)', ['4 ml']],
    ["it isn't [400 l](system), its [340 l](system)", ['340 l']],
    [
      'display [120](length) x [50](length) x [50](length). Forget the old [200 l](system), that went',
      ['120', '50', '50'],
    ],
    ['my old [75 gal](system) is gone, its a [120 gal](system) now', ['120 gal']],
  ])('%s', (marked, kept) => expect(left(marked)).toEqual(kept));

  it.each([
    ['alk was old [8.2](was alkalinity), now [7.9](now alkalinity)', ['8.2', '7.9']],
    ['forget the [200 l](system)', ['200 l']],
    ['why is it not [8](wanted alkalinity)', ['8']],
    ['alk [7](now alkalinity), not in [75 gal](system) though', ['7', '75 gal']],
  ])('all of it stays: %s', (marked, kept) => expect(left(marked)).toEqual(kept));
});
