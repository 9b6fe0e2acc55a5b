import { describe, expect, it } from 'vitest';
import { dangerOf, isDangerKind, isSum } from '../../../core/language/kind-groups.ts';
import { kinds } from '../../../core/language/kinds.ts';

describe('groups of kinds', () => {
  it('has two kinds of danger, and their probability in sum', () => {
    expect(kinds.filter(isDangerKind).toSorted()).toEqual(['person-hurt', 'urgent-water']);
    expect(isDangerKind(undefined)).toBe(false);
    const read = [
      { name: 'told', probability: 0.5 },
      { name: 'person-hurt', probability: 0.25 },
      { name: 'urgent-water', probability: 0.125 },
    ];
    expect(dangerOf(read)).toBe(0.375);
  });

  it('knows the sums', () => {
    expect((['dose-amount', 'change-goal', 'salinity-mix', 'volume'] as const).every(isSum)).toBe(true);
    expect((['told', 'urgent-water', 'light-hours', 'coral-place'] as const).some(isSum)).toBe(false);
  });
});
