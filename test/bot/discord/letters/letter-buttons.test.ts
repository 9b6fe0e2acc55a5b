import { afterEach, beforeEach, expect, it } from 'vitest';
import { remindCommands } from '../../../../commands/remind.ts';
import { displayedText, everyComponent } from '../../../discord/standin/component.ts';
import type { Sent } from '../../../discord/standin/message.ts';
import { channelIds, guildId, userIds } from '../../../discord/standin/world.ts';
import { minuteMs, openLetterRoom, task, type LetterRoom } from './letters.ts';

const { keeper, second } = userIds;
const inChat = { place: { kind: 'channel', serverId: guildId, channelId: channelIds.chat } } as const;
const everyWeek = { rule: { every: 'days', count: 7 } } as const;

let room: LetterRoom;

beforeEach(async () => {
  room = await openLetterRoom(remindCommands);
});

afterEach(async () => {
  await room.close();
  if (room.log.join('').includes('errorId')) throw new Error(room.log.join(''));
});

async function letterOf(plan: Parameters<LetterRoom['remind']>[1]): Promise<Sent> {
  room.remind(keeper, plan);
  await room.begin();
  await room.clock.pass(2 * minuteMs);
  return room.standIn.sent.find(({ text }) => text.includes(task)) ?? expect.unreachable();
}

const buttonOf = (sent: Sent, label: string): string =>
  String(everyComponent(sent.components).find((each) => each['label'] === label)?.['custom_id']);
const now = (sent: Sent): string =>
  displayedText(room.standIn.messageNow(sent.message['id'])?.['components']).join('\n');
const buttonsNow = (sent: Sent): readonly unknown[] =>
  everyComponent(room.standIn.messageNow(sent.message['id'])?.['components']).flatMap(
    (each) => each['label'] ?? [],
  );
const on = ({ message }: Sent) => ({ messageId: String(message['id']) });
const lastDone = () => room.store().keepFor(keeper).reminders()[0]?.lastDoneMs;

it.each([
  ['Done', `Done: ${task}.`],
  ['Skip', `Left out: ${task}`],
])('%s in a direct message is told on the letter, which loses its buttons', async (label, told) => {
  const letter = await letterOf(everyWeek);
  const pressed = room.standIn.component(buttonOf(letter, label), { ...on(letter), dm: true });
  expect((await pressed.reply).message['id']).toBe(letter.message['id']);
  expect(now(letter)).toContain(`### ${task}`);
  expect(now(letter)).toContain(told);
  expect(buttonsNow(letter).filter((each) => ['Done', 'Later', 'Skip'].includes(String(each)))).toEqual([]);
});

it('Later asks when, and the letter keeps its buttons until that is said', async () => {
  const letter = await letterOf(everyWeek);
  const asked = await room.standIn.component(buttonOf(letter, 'Later'), { ...on(letter), dm: true }).reply;
  expect(asked.message['id']).not.toBe(letter.message['id']);
  expect(buttonsNow(letter)).toEqual(['Done', 'Later', 'Skip']);
});

it('Done in a channel is told its owner alone; the letter says that it was pressed, and no more', async () => {
  const letter = await letterOf({ ...everyWeek, ...inChat });
  const id = buttonOf(letter, 'Done');
  const other = await room.standIn.component(id, { ...on(letter), userId: second }).reply;
  expect([other.ephemeral, lastDone()]).toEqual([true, undefined]);
  expect(buttonsNow(letter)).toEqual(['Done', 'Later', 'Skip']);
  const told = await room.standIn.component(id, on(letter)).reply;
  expect([told.ephemeral, told.text.includes(`Done: ${task}.`)]).toEqual([true, true]);
  await room.standIn.until(() => (buttonsNow(letter).length === 0 ? true : undefined), 'edit the letter');
  expect(now(letter)).toContain(`<@${keeper}>`);
  expect(now(letter).split('\n').at(-1)).toBe('-# Pressed: Done');
  expect(lastDone()).toBe(room.clock.nowMs());
});
