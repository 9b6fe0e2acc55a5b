import { describe, expect, it } from 'vitest';
import { trustedOf } from '../../../core/language/trusted.ts';
import { saidOf } from './said-of.ts';

const two = [
  ['other', 'salinity'],
  ['now', 'salinity'],
] as const;

describe('the reading that is trusted', () => {
  it.each([
    ['her gauge says 31 where mine says 35, and i trust hers', '31'],
    ['her gauge says 31 where mine says 35, but i trust mine', '35'],
    ['refractometer 35 but the lab says 32, i believe the lab', '32'],
    ['hydrometer 1.026, refractometer 1.022, and that one i trust', '1.022'],
    ['hydrometer 1.026, refractometer 1.022, which to trust', undefined],
    ['hydrometer 1.026, refractometer 1.022', undefined],
  ])('%s', (text, trusted) => {
    const { scanned, said } = saidOf(
      text,
      ...two,
      ...(text.includes('one i') ? [['none', 'nothing'] as const] : []),
    );
    expect(trustedOf(scanned, said.slice(0, 2))?.text).toBe(trusted);
  });
});
