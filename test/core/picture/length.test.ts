import { expect, it } from 'vitest';
import { cmOf, lengthUnitOf } from '../../../core/picture/length.ts';

// CLDR supplemental data, measurement systems, from memory: US for the United States and Liberia.
it.each([
  ['en-US', 'in'],
  ['es-US', 'in'],
  ['en-GB', 'cm'],
  ['en', 'cm'],
  ['pt-BR', 'cm'],
  [undefined, 'cm'],
] as const)('%s measures in %s', (locale, unit) => expect(lengthUnitOf(locale)).toBe(unit));

// NIST SP 811, 2008, appendix B.8: 1 in = 2.54 cm exactly.
it('an inch is 2.54 cm', () => expect([cmOf('in'), cmOf('cm')]).toEqual([2.54, 1]));
