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
    [' a month', 30.4375],
    [' each month', 30.4375],
    [' every fortnight', 14],
    [' twice a week', 3.5],
    [' 3x a week', 7 / 3],
    [' three times per day', 1 / 3],
    ['/min', 1 / 1440],
    [' no3/mo', 30.4375],
    [' and nothing else', undefined],
  ])('%s', (text, days) => expect(rateAt(text, 0)).toBe(days));
});
