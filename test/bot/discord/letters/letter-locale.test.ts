import { afterEach, beforeEach, expect, it } from 'vitest';
import { openLog } from '../../../../bot/log.ts';
import { letterWire } from '../../../../bot/discord/letters/letter-wire.ts';
import { openStore } from '../../../../bot/store/open.ts';
import { answer } from '../../../../commands/answer.ts';
import { commands } from '../../../../commands/index.ts';
import { ask } from '../../../ask.ts';
import { userIds } from '../../../discord/standin/world.ts';
import { nowMs, openClub } from '../club.ts';
import type { Club } from '../club.ts';

let club: Club;
beforeEach(async () => {
  club = await openClub({ commands, ask });
});
afterEach(() => club.close());

function sentFor(locale: string | undefined): string {
  const { held } = openStore({ file: ':memory:', nowMs: () => nowMs });
  const facts = [{ label: 'Last alkalinity', value: '8.2 dKH' }];
  const letter = {
    toPersonId: userIds.keeper,
    place: { kind: 'direct' },
    answer: answer({ headline: 'Test it.', facts }),
    nonce: 'r1',
    attempts: 0,
    locale,
  } as const;
  return JSON.stringify(
    letterWire({ held, newHeldId: () => 'abcdefgh', log: openLog('fatal', { write: () => {} }) }, letter)
      .body,
  );
}

// CLDR: a comma before decimals in German, a point in British English.
it.each([
  ['de', '8,2 dKH'],
  ['en-GB', '8.2 dKH'],
  [undefined, '8.2 dKH'],
])('a letter to somebody with %s writes %s', (locale, number) => expect(sentFor(locale)).toContain(number));

it('the locale is noted with the first thing that is kept, and not before', async () => {
  const keep = club.store.keepFor(userIds.keeper);
  await club.standIn.slash('convert', { amount: '75 gal' }, { locale: 'de' }).reply;
  expect(keep.locale()).toBeUndefined();
  await club.standIn.slash('zone', { zone: 'Europe/Berlin' }, { locale: 'de' }).reply;
  expect(keep.locale()).toBe('de');
  await club.standIn.slash('mydata', { sure: 'yes' }, { subcommand: 'erase', locale: 'de' }).reply;
  expect(keep.locale()).toBeUndefined();
});
