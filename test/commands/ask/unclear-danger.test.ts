import { describe, expect, it } from 'vitest';
import { offers } from '../../../commands/ask/offer.ts';
import { unclearDangers } from '../../../commands/ask/unclear-danger.ts';
import { nearest } from '../../../commands/primer/particular.ts';
import type { Kind } from '../../../core/language/kinds.ts';
import { frameOf } from './rows/asked.ts';

/** Chlorine of bleach with acid is of GHS sheets, burns by peroxide with acid from memory. */
describe('what is not clear and may hurt', () => {
  it.each<Kind>(['handling', 'mixing'])(
    '%s: never acid with bleach or peroxide, whatever is meant',
    (kind) => {
      const warned = /Never mix acid or vinegar with bleach or peroxide/;
      expect(nearest([], unclearDangers([kind])).dangers[0]).toMatch(warned);
      expect(offers([frameOf('convert', '8 dkh'), frameOf(kind, 'can i')]).dangers[0]).toMatch(warned);
    },
  );

  it('is not said of other kinds', () => expect(unclearDangers(['convert', 'flow'])).toEqual([]));
});
