import { describe, expect, it } from 'vitest';
import { rateAt } from '../../../../core/language/scan/rate.ts';

describe('how often', () => {
  it.each<readonly [string, number | undefined]>([
    [' a day', 1],
    ['/wk', 7],
    [' every other sunday', 14],
    [' each saturday', 7],
    [' every third day', 3],
    [' of soda ash a day', 1],
    [' fortnightly', 14],
    [' and nothing else', undefined],
  ])('%s', (text, days) => expect(rateAt(text, 0)).toBe(days));
});
