import { expect, it } from 'vitest';
import { fishTogetherRow } from '../../../../commands/ask/rows/fish-together.ts';
import { rowAnswer } from './asked.ts';

/** Common practice, no source; the same as in the cards of fish. */
it.each([
  [
    '2 clowns, 4 firefish, a gramma and a sixline in 40g, peace or war',
    /^Not as it stands in 150 L \(40 gal\)/,
  ],
  ['2 clowns 2 damsels 40 gal, bloodbath or nah', /at most one damsel, not 2/],
  ['yellow tang and a foxface in a 55 gallon?', /a tang wants 300 L \(80 gal\)/],
  ['75 gal: two clowns, watchman goby, lawnmower blenny, royal gramma. ok?', /^Mostly yes in 285 L/],
  ['can a yellow tang go in with two clowns and a dottyback, 400 litre', /^Mostly yes .* 120 cm \(4 ft\)/],
])('%s', (text, headline) =>
  expect(rowAnswer([fishTogetherRow], 'fish-together', text)?.headline).toMatch(headline),
);

it('a history of spots is told beside', () =>
  expect(
    rowAnswer(
      [fishTogetherRow],
      'fish-together',
      'he had ich once, can a goby join my clowns in 200 litres',
    )?.steps.join(),
  ).toMatch(/quarantine 4 to 6 weeks/));

it('leaves a list with a fish it does not know to the cards', () =>
  expect(rowAnswer([fishTogetherRow], 'fish-together', 'clowns with a shark in 400 litres')).toBeUndefined());
