import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { respelt } from '../../../core/words/spelling.ts';

describe('respelt', () => {
  it.each([
    ['my anenome is dieing', 'my anemone is dying'],
    ['two anemonies', 'two anemones'],
    ['no electricty since noon', 'no electricity since noon'],
    ['amonia 2 ppm', 'ammonia 2 ppm'],
    ['salinty 1.025', 'salinity 1.025'],
    ['aptasia and hair algea', 'aiptasia and hair algae'],
    ['sump overflowd', 'sump overflowed'],
    ['swalowed peroxid', 'swallowed peroxide'],
    ['he is unconcious', 'he is unconscious'],
    ['the lamp is smokin', 'the lamp is smoking'],
    ['planarias', 'planarias'],
  ])('%s: %s', (given, right) => expect(respelt(given)).toBe(right));

  it.each([
    'ammonium is not ammonia, and chloride is not chlorine',
    'i was conscious of a temperate sea, the fish is overeating',
    'calcite, calcium chloride and magnesium hydroxide',
    'overflow box, overdose, poisonous, leek soup, burn in a lamp',
    'mushroom, goniopora, acropora, zoanthus',
    'no3-n 2.5 ppm, po4-p 0.03, 8.3 dkh',
  ])('leaves alone: %s', (text) => expect(respelt(text)).toBe(text));

  it('changes nothing a second time', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[a-z ]{0,60}$/), (text) => {
        expect(respelt(respelt(text))).toBe(respelt(text));
      }),
    );
  });
});
