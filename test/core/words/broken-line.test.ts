import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { brokenLine } from '../../../core/words/broken-line.ts';

it.each([
  ['a (x; y); b', 12, ['a (x; y); b', '']],
  ['a (x; y); b', 9, ['a (x; y)', 'b']],
  ['a (x; y); b', 3, ['a (x; y)', 'b']],
  ['9.8 cm. Then 12 cm; more', 18, ['9.8 cm. Then 12 cm', 'more']],
  ['no place to break it', 5, ['no place to break it', '']],
])('%s in %d letters', (text, letters, parts) => expect(brokenLine(text, letters)).toEqual(parts));

it('loses nothing but the dividing sign', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom('a', 'b (c; d)', 'e. f', 'g; h')), fc.nat(40), (parts, letters) => {
      const text = parts.join('; ');
      const [first, rest] = brokenLine(text, letters);
      expect(text.startsWith(first) && text.endsWith(rest)).toBe(true);
      expect(text.length - first.length - rest.length).toBe(rest === '' ? 0 : 2);
    }),
  );
});
