import { describe, expect, it } from 'vitest';
import { lazyReader } from '../../../bot/reader/load.ts';
import { openStore } from '../../../bot/store/open.ts';
import { openTalks } from '../../../bot/talks.ts';
import { profile } from '../../bot/discord/members.ts';
import { ask } from '../../ask.ts';

const nowMs = Date.UTC(2026, 5, 1, 18);

/** A member with a tank who has said something before. */
function said(before: readonly string[], text: string) {
  const keep = openStore({ file: ':memory:', nowMs: () => nowMs }).keepFor('100000000000000001');
  const { id } = keep.addTank(profile('Pantry', 251.7));
  const talks = openTalks(() => nowMs);
  const say = (each: string) =>
    ask(each, { nowMs, keep, zone: 'UTC', reader: lazyReader, talk: talks.talkOf('member', ['here']) });
  before.forEach(say);
  return { keep, id, answer: say(text) };
}

describe.each([[[]], [['what is alk']], [['my torch is closed', 'salinity 33 ppt']]])(
  'after %j',
  (before) => {
    it('readings are logged once', () => {
      const { keep, id, answer } = said(before, 'write down kh 7.9 and mag 1290');
      expect(answer.headline).toContain('Logged for Pantry');
      expect(keep.readings(id, {}).map(({ parameter, value }) => [parameter, value])).toEqual([
        ['alkalinity', 7.9],
        ['magnesium', 1290],
      ]);
    });

    it('a reminder is set once, and that is what is said', () => {
      const { keep, answer } = said(before, 'remind me to test alk every saturday 9am');
      expect(answer.headline).toMatch(/^Set as reminder 1/);
      expect(keep.reminders()).toHaveLength(1);
    });
  },
);
