import { describe, expect, it } from 'vitest';
import { framesOf } from '../../../core/language/frame.ts';
import type { Slots } from '../../../core/language/slots.ts';
import { plain, scriptedReader } from '../../scripted-reader.ts';

function slotsOf(marked: string): Slots | undefined {
  const reader = scriptedReader([{ marked, kinds: [['change-once', 0.9]] }]);
  return framesOf(reader.read(plain(marked)))[0]?.slots;
}

describe('water that is changed', () => {
  it.each<readonly [string, Partial<Slots>]>([
    ['change [half](changed water) of it', { share: '50 %' }],
    ['change [1/4](changed water) of the tank', { share: '25 %' }],
    ['change [a fifth](changed water) of it', { share: '20 %' }],
    ['[20](changed water) out of [200 l](system)', { changed: '20 l', volume: '200 l' }],
    ['[20 %](changed water) or [30](changed water)', { shares: ['20 %', '30 %'] }],
    ['[3](count) buckets of [12 l](changed water)', { changed: '36 l' }],
    ['[two](count) [5 gal](changed water) buckets', { changed: '10 gal' }],
    ['[10 l](changed water) and later [25 l](changed water)', { batches: ['10 l', '25 l'] }],
    ['[5](changed water) gone, holds [80](display) plus [12](sump)', { changed: '5' }],
  ])('%s', (marked, slots) => expect(slotsOf(marked)).toMatchObject(slots));

  it('a tank that is a cube is no food', () =>
    expect(slotsOf('sold the [40](system), now a [10](system) cube, change [2](changed water)')?.volume).toBe(
      '10',
    ));

  it.each<readonly [string, number]>([
    ['[10 l](changed water) twice a week', 3.5],
    ['[10 l](changed water) each month', 30.4375],
    ['[20 %](changed water) [every 5 days](span)', 5],
    ['[20 %](changed water) weekly', 7],
    ['two changes, [2](count) a week, of [20 %](changed water)', 3.5],
  ])('%s is every %d days', (marked, days) => expect(slotsOf(marked)?.everyDays).toBeCloseTo(days, 6));

  it('counts buckets once, and how often not as a count', () => {
    expect(slotsOf('[9](count) buckets of [12 l](changed water)')?.counts).toBeUndefined();
    expect(slotsOf('[10 l](changed water) [twice](count) a week')?.counts).toBeUndefined();
  });
});
