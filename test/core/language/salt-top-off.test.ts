import { describe, expect, it } from 'vitest';
import { isByTopOff, isFreshForSalt, isSaltTopOff } from '../../../core/language/salt-top-off.ts';
import { scan } from '../../../core/language/tokens.ts';

describe('salt water where fresh water goes, and the other way round', () => {
  it.each([
    'the top-up jug has saltwater in it, not ro',
    'been topping off with salt by mistake',
    'ATO filled from the wrong barrel',
    'he tops it up with salt water instead of fresh',
  ])('salt: %s', (text) => expect(isSaltTopOff(scan(text))).toBe(true));

  it.each([
    'my saltwater tank, no top off until friday',
    'no ato, loses 2 l a day, where does the salt stand',
    'topping off with ro, not saltwater',
  ])('none: %s', (text) => expect(isSaltTopOff(scan(text))).toBe(false));

  it.each(['filled up with sweet instead of salt', 'did the change and forgot the salt'])(
    'fresh: %s',
    (text) => expect(isFreshForSalt(scan(text))).toBe(true),
  );

  it('fresh water in the top-off is right', () =>
    expect(isFreshForSalt(scan('top off with ro instead of salt water'))).toBe(false));

  it.each([
    ['bring it up by way of the top-up jug', true],
    ['raise it by topping off with saltwater', true],
    ['top off ran over and now it is low', false],
  ])('%s', (text, isIt) => expect(isByTopOff(scan(text))).toBe(isIt));
});
