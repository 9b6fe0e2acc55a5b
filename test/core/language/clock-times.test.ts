import { describe, expect, it } from 'vitest';
import { withClockTimes } from '../../../core/language/clock-times.ts';
import type { PartName } from '../../../core/language/parts.ts';
import { saidOf } from './said-of.ts';

const parts = ({ scanned, said }: ReturnType<typeof saidOf>): readonly PartName[] =>
  withClockTimes(scanned, said).map(({ part }) => part);

describe('hours of the clock', () => {
  it('are no levels where something was given at them', () => {
    const text = 'i gave alk at 7 and at 8 he gave it again';
    expect(parts(saidOf(text, ['now', 'alkalinity'], ['moment', 'nothing']))).toEqual(['moment', 'moment']);
  });

  it('leave levels alone', () => {
    const text = 'alk at 7 in the tank, new mix at 8';
    expect(parts(saidOf(text, ['now', 'alkalinity'], ['other', 'alkalinity']))).toEqual(['now', 'other']);
  });
});
