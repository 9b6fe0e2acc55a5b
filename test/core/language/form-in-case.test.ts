import { expect, it } from 'vitest';
import { noCase, withMoment } from '../../../core/language/case.ts';
import { withForm } from '../../../core/language/form-in-case.ts';
import { saidOf } from './said-of.ts';

function saltsIn(told: string, text: string): readonly string[] {
  const { scanned, said } = saidOf(text);
  const before = withMoment(noCase, { atMs: 0, kind: 'told', slots: { salt: told, salts: [told] } }, '');
  const reading = { given: text, scanned, said, kinds: [], cards: () => [] };
  return withForm(reading, before).scanned.names.map(({ id }) => id);
}

it.each([
  ['calcium chloride anhydrous', 'tub says dihydrate, so not the dry stuff', ['calcium chloride dihydrate']],
  ['calcium chloride', 'it is the dihydrate', ['calcium chloride dihydrate']],
  ['magnesium chloride', 'hexahydrate on the label', ['magnesium chloride hexahydrate']],
  ['soda ash', 'the tub is blue', []],
])('%s, then %s', (told, text, salts) => expect(saltsIn(told, text)).toEqual(salts));
