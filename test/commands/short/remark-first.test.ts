import { expect, it } from 'vitest';
import { answer } from '../../../commands/answer.ts';
import { remarkFirst } from '../../../commands/short/remark-first.ts';
import { salinityRemark } from '../../../core/water/salinity-remark.ts';

const given = answer({ headline: 'Raise it.' });

it('a remark on salinity is said once', () => {
  for (const ppt of [25, 39.8]) {
    const remark = salinityRemark(ppt);
    const once = remarkFirst(remark, given);
    expect(once.headline).toContain(remark);
    expect(remarkFirst(remark, once)).toEqual(once);
  }
  expect(remarkFirst(undefined, given)).toBe(given);
});

it('a remark that has no room in the first line is a fact, once', () => {
  const remark = salinityRemark(39.8);
  const long = answer({ headline: `${'Raise it slowly and test again. '.repeat(4)}So.` });
  const once = remarkFirst(remark, long);
  expect(once.facts).toEqual([{ label: 'Salinity', value: '39.8 ppt is high; 33 to 36 ppt is usual.' }]);
  expect(remarkFirst(remark, once)).toEqual(once);
});
