import { describe, expect, it } from 'vitest';
import { rateAt, rateBefore } from '../../../../core/language/scan/rate.ts';

describe('how often', () => {
  it.each<readonly [string, number | undefined]>([
    [' a day', 1],
    ['/wk', 7],
    [' every other sunday', 14],
    [' each saturday', 7],
    [' every third day', 3],
    [' of soda ash a day', 1],
    [' fortnightly', 14],
    [' twice a week', 3.5],
    [' 3 times daily', 1 / 3],
    [' once a week', 7],
    ['/month', 30.4375],
    [' each monday', 7],
    [' every other day', 2],
    [' a month', 30.4375],
    [' each month', 30.4375],
    [' every fortnight', 14],
    [' 3x a week', 7 / 3],
    [' three times per day', 1 / 3],
    ['/min', 1 / 1440],
    [' no3/mo', 30.4375],
    [' the week', 7],
    [' in the week', 7],
    [' over a week', 7],
    [' per wk', 7],
    [' in one month', 30.4375],
    [' a month long', 30.4375],
    [' in the week before', undefined],
    [' the day i got it', undefined],
    [' and nothing else', undefined],
  ])('%s', (text, days) => expect(rateAt(text, 0)).toBe(days));
});

describe('how often, said before the number', () => {
  it.each<readonly [string, number | undefined]>([
    ['each week i lose ', 7],
    ['every 3 days it falls by ', 3],
    ['twice a week i put in ', 3.5],
    ['a week ago it read ', undefined],
    ['each week i test. it read ', undefined],
  ])('%s', (text, days) => expect(rateBefore(text, text.length)).toBe(days));
});
