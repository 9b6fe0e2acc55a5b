import { describe, expect, it } from 'vitest';
import { noCase, withMoment } from '../../../core/language/case.ts';
import { renamed } from '../../../core/language/renamed.ts';
import { scan } from '../../../core/language/tokens.ts';

const told = withMoment(
  noCase,
  {
    atMs: 0,
    kind: 'readings-ok',
    slots: {
      of: 'calcium',
      levels: [{ of: 'calcium', part: 'was', text: '8.4', value: 8.4 }],
      was: '8.4',
    },
  },
  'calcium was 8.4 on sunday',
);

describe('a name put right', () => {
  it.each([
    ['sorry i mean kh not calcium', 'alkalinity'],
    ['kh, not the calcium. my head', 'alkalinity'],
    ['i mean calcium', 'calcium'],
    ['not calcium', 'calcium'],
    ['kh and mg, not calcium', 'calcium'],
  ])('%s: %s', (text, of) => {
    const [moment] = renamed(told, scan(text)).moments;
    expect(moment?.slots.levels?.map((level) => level.of)).toEqual([of]);
    expect(moment?.slots.of).toBe(of);
  });
});
