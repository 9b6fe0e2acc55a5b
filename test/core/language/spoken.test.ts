import { describe, expect, it } from 'vitest';
import { numbersIn } from '../../../core/language/scan/numbers.ts';

describe('numbers in words', () => {
  it.each(['ten constructor', 'constructor', 'valueOf toString', 'twenty __proto__', 'hasownproperty'])(
    'are not made of what every object has: "%s"',
    (text) =>
      expect(numbersIn(text).map(({ value }) => value)).toEqual(
        [/ten/, /twenty/].flatMap((word, index) => (word.test(text) ? [(index + 1) * 10] : [])),
      ),
  );
});
