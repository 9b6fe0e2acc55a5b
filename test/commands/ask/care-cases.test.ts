import { describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import { care } from '../../cases/care.ts';
import { rendered } from '../coral/rendered.ts';
import { textOf } from '../text.ts';

describe.each(Object.entries(care))('%s', (_, { asked }) => {
  it('is shown on Discord with every danger', () => {
    const given = ask(asked, { nowMs: 0 });
    const { issues, text } = rendered(given);
    expect(issues).toEqual([]);
    for (const line of given.dangers) expect(text.replaceAll(/[\\\u200b]/g, '')).toContain(line);
  });
});

describe('a cycle log in other words', () => {
  it.each([
    [
      'cycling. day 3 ammonia 2 nitrite 0; day 6 ammonia 4 nitrite 0.1. how long',
      /^Not yet: ammonia is not falling/,
    ],
    [
      'cycle: 3/1 amm 3 no2 0, 3/8 amm 0.5 no2 2, 3/15 amm 0 no2 0, 3/17 amm zero no2 zero. cuc now?',
      /^It looks ready/,
    ],
    ['cycle log 1/2 ammonia: 4 nitrite: 0, 1/9 ammonia: 0 nitrite: 5', /^Half way/],
    ['is my cycle done? ammonia 0 nitrite 0 nitrate 20', /^Perhaps: both read none once/],
    ['cycling since may. 5/20 nh3 0 no2 0; 5/22 nh3 0 no2 0; is it cycled', /^Not to be told yet/],
  ])('%s', (question, pattern) => {
    const text = textOf(ask(question, { nowMs: 0 }));
    expect(text).toMatch(pattern);
    expect(text).not.toMatch(/fully cycled/i);
  });

  it('leaves a line of readings alone', () =>
    expect(ask('ammonia 0 nitrite 0 nitrate 20 ph 8.1 temp 78', { nowMs: 0 }).headline).not.toMatch(
      /Nearly|Half way|Perhaps|looks ready/,
    ));

  it('takes what a log says for a wish to log it', () =>
    expect(ask('log says ammonia 0 nitrite 0', { nowMs: 0 }).next[0]?.command).toBe('log add'));
});
