import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ask } from '../../../commands/ask.ts';
import { commands } from '../../../commands/index.ts';
import type { Sent } from '../../discord/standin/message.ts';
import { userIds } from '../../discord/standin/world.ts';
import { plain, scriptedReader } from '../../scripted-reader.ts';
import { openClub, type Club } from './club.ts';
import { profile } from './members.ts';

const { keeper, second } = userIds;
const HOUR_MS = 3_600_000;
const marked =
  '[75 gal](system), alk [7.2](now alkalinity) to [8.4](wanted alkalinity), [20 g](amount substance) soda ash';
const noVolume = 'alk [7.2](now alkalinity) to [8.4](wanted alkalinity), [20 g](amount substance) soda ash';
const other = '[90 gal](system), alk [6.9](now alkalinity) to [8](wanted alkalinity) with soda ash';
const kinds = [
  ['dose-amount', 0.7],
  ['dose-effect', 0.1],
] as const;
const reader = scriptedReader([marked, noVolume, other].map((each) => ({ marked: each, kinds })));
const [question, short, later] = [plain(marked), plain(noVolume), plain(other)];

let nowMs: number;
let club: Club;

beforeEach(async () => {
  nowMs = 1_700_000_000_000;
  club = await openClub({ commands, ask, reader, nowMs: () => nowMs });
});
afterEach(() => club.close());

const NOT = 'run:ask?not=dose-amount';
const AS = 'run:ask?as=dose-effect';
const on = ({ message }: Sent) => ({ messageId: String(message['id']) });
const press = async (id: string, sent: Sent, userId: string = keeper) =>
  club.standIn.component(id, { ...on(sent), userId }).reply;

describe('a button under an answer to plain words', () => {
  it('takes the message of that answer anew, not the latest of the channel', async () => {
    const first = await club.standIn.mention(question).reply;
    await club.standIn.mention(later).reply;
    const pressed = await press(NOT, first);
    expect(pressed.text).toContain('Which of these do you mean?');
    expect(pressed.text).toContain('75 gal');
    expect(pressed.text).not.toContain('90');
    const effect = await press(AS, pressed);
    expect(effect.text).toMatch(/20 g/);
    expect(effect.ephemeral).toBe(false);
  });

  it('does so after a slash command, and privately under a private answer', async () => {
    club.store.keepFor(keeper).addTank(profile('Pantry', 251.7));
    const asked = await club.standIn.slash('ask', { question: short }).reply;
    expect(asked.ephemeral).toBe(true);
    expect(asked.text).toContain('Pantry');
    const pressed = await press(NOT, asked);
    expect(pressed.ephemeral).toBe(true);
    const effect = await press(AS, pressed);
    expect(effect.ephemeral).toBe(true);
    expect(effect.text).toContain('251.7 L');
  });

  it('is public under a public answer, and tells of no tank', async () => {
    club.store.keepFor(keeper).addTank(profile('Pantry', 251.7));
    const asked = await club.standIn.mention(short).reply;
    const pressed = await press(NOT, asked);
    expect(pressed.ephemeral).toBe(false);
    const effect = await press(AS, pressed);
    expect(effect.ephemeral).toBe(false);
    expect(asked.text + pressed.text + effect.text).not.toMatch(/Pantry|251/);
  });

  it('pressed by somebody else tells them privately that there is no message of theirs', async () => {
    const asked = await club.standIn.mention(question).reply;
    await club.standIn.mention(later, { userId: second }).reply;
    const pressed = await press(NOT, asked, second);
    expect(pressed.ephemeral).toBe(true);
    expect(pressed.text).toContain('I no longer have your message.');
    expect(pressed.text).not.toMatch(/75|90/);
    const slash = await club.standIn.slash('ask', { question }).reply;
    expect(slash.ephemeral).toBe(false);
    const elses = await press(NOT, slash, second);
    expect([elses.ephemeral, elses.text.includes('I no longer have your message.')]).toEqual([true, true]);
  });

  it('in direct messages finds its answer too', async () => {
    const first = await club.standIn.directMessage(question).reply;
    await club.standIn.directMessage(later).reply;
    const pressed = await club.standIn.component(NOT, { ...on(first), dm: true }).reply;
    expect(pressed.text).toContain('75 gal');
  });

  it('is told kindly after two hours', async () => {
    const asked = await club.standIn.mention(question).reply;
    nowMs += 2 * HOUR_MS + 1;
    const pressed = await press(NOT, asked);
    expect([pressed.ephemeral, pressed.text.includes('I no longer have your message.')]).toEqual([
      true,
      true,
    ]);
  });

  it('finds nothing once everything was erased', async () => {
    const asked = await club.standIn.mention(question).reply;
    await club.standIn.slash('mydata', { sure: 'yes' }, { subcommand: 'erase' }).reply;
    expect((await press(NOT, asked)).text).toContain('I no longer have your message.');
  });
});
