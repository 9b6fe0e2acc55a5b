import { describe, expect, it } from 'vitest';
import { hear } from '../../../core/words/hear.ts';
import { loweredIn } from '../../../core/words/lowering.ts';

describe('what is wished lower', () => {
  it.each([
    'no3 50 po4 0.4, what can I add to bring them down?',
    'how do i lower nitrate and phosphate',
    'nitrate 80 and phosphates .5 are way too high',
    'get my no3 and po4 down asap',
    'need to reduce nitrates and phosphate',
  ])('%s', (text) => expect(loweredIn(hear(text))).toEqual(['nitrate', 'phosphate']));

  it.each([
    'nitrate dropped to 0, what do i dose to raise it',
    'no3 and po4 both read zero, should I dose?',
    'raise nitrate from 1 to 5',
    'bring my nitrate up a bit',
  ])('nothing in: %s', (text) => expect(loweredIn(hear(text))).toEqual([]));
});
