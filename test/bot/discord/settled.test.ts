import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commands } from '../../../commands/index.ts';
import { ask } from '../../ask.ts';
import { displayedText, everyComponent } from '../../discord/standin/component.ts';
import type { Sent } from '../../discord/standin/message.ts';
import { userIds } from '../../discord/standin/world.ts';
import { openClub } from './club.ts';
import type { Club } from './club.ts';
import { moveIn } from './members.ts';
import { whyOf } from './whole-text.ts';

const { keeper, second } = userIds;

let nowMs: number;
let club: Club;

beforeEach(async () => {
  nowMs = 1_700_000_000_000;
  club = await openClub({ commands, ask, nowMs: () => nowMs });
  moveIn(club.store.keepFor(keeper), 'Pantry', 251.7, 'own');
});

afterEach(async () => {
  await club.close();
  if (club.log.join('').includes('errorId')) throw new Error(club.log.join(''));
});

const on = (sent: Sent) => ({ messageId: String(sent.message['id']) });
const stored = (sent: Sent) => club.standIn.messageNow(sent.message['id']);
const idsOf = (wire: Sent['message'] | undefined): readonly string[] =>
  everyComponent(wire?.['components']).flatMap((each) =>
    typeof each['custom_id'] === 'string' ? [each['custom_id']] : [],
  );
const wordsOf = (wire: Sent['message'] | undefined): string => displayedText(wire?.['components']).join('\n');

describe('a button that changes something, on an answer its presser alone sees', () => {
  it('edits it: the outcome stands there, and the buttons are gone', async () => {
    const logged = await club.standIn.slash('log', { readings: 'alk 8.2' }, { subcommand: 'add' }).reply;
    const undo = idsOf(logged.message).find((id) => id.includes('log undo')) ?? expect.unreachable();
    const pressed = club.standIn.component(undo, on(logged));
    const shown = await pressed.reply;
    expect((await pressed.acknowledged).type).toBe(7);
    expect(shown.message['id']).toBe(logged.message['id']);
    expect(shown.ephemeral).toBe(true);
    expect(shown.text).toContain(logged.text.split('\n')[0]);
    expect(shown.text).toMatch(/taken back|removed|undone/i);
    expect(idsOf(stored(logged))).not.toContain(undo);
    expect(
      club.store
        .keepFor(keeper)
        .readings(1, { parameter: 'alkalinity' })
        .map(({ value }) => value),
    ).toEqual([8.3]);
  });

  it('leaves nothing of what was erased', async () => {
    const asked = await club.standIn.slash('mydata', {}, { subcommand: 'erase' }).reply;
    expect(asked.text).toContain('Pantry');
    const shown = await club.standIn.component('run:mydata erase?sure=yes', on(asked)).reply;
    expect(shown.message['id']).toBe(asked.message['id']);
    expect(wordsOf(stored(asked))).toContain('Everything kept of you is removed.');
    expect(wordsOf(stored(asked))).not.toContain('Nothing is removed yet');
    expect(idsOf(stored(asked))).toEqual([]);
  });
});

describe('a button that changes nothing', () => {
  it('answers apart, and its message stays', async () => {
    const asked = await club.standIn.slash('mydata', {}, { subcommand: 'erase' }).reply;
    const before = JSON.stringify(stored(asked));
    const why = whyOf(asked) ?? expect.unreachable();
    const pressed = club.standIn.component(why, on(asked));
    expect((await pressed.reply).message['id']).not.toBe(asked.message['id']);
    expect(JSON.stringify(stored(asked))).toBe(before);
  });
});

describe('a double press', () => {
  it('is answered once; later, and by somebody else, it is another', async () => {
    const given = { of: 'alkalinity', now: '7.2', goal: '8.4', with: 'soda ash', volume: '75 gal' };
    const asked = await club.standIn.slash('dose', given, { subcommand: 'amount' }).reply;
    const why = whyOf(asked) ?? expect.unreachable();
    const press = (userId: string) => club.standIn.component(why, { ...on(asked), userId });
    const presses = [press(keeper), press(keeper), press(second)];
    const types = await Promise.all(presses.map(async (each) => (await each.acknowledged).type));
    expect(types).toEqual([4, 6, 4]);
    nowMs += 2001;
    expect((await press(keeper).reply).ephemeral).toBe(true);
  });
});
