import * as fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { callId, readCallId } from '../../../../bot/discord/asked/call.ts';
import type { Json } from '../../../discord/standin/json.ts';
import { list, record } from '../../../discord/standin/json.ts';
import { userIds } from '../../../discord/standin/world.ts';
import { openClub } from '../club.ts';
import type { Club } from '../club.ts';
import { formCommands } from './form-commands.ts';
import { moveIn } from '../members.ts';

const { keeper, second } = userIds;
const id = 'ask:note enter?item=12!readings';

let club: Club;

beforeEach(async () => {
  club = await openClub({ commands: formCommands });
  moveIn(club.store.keepFor(keeper), 'Pantry', 251, 'before');
});

afterEach(async () => {
  await club.close();
  if (club.log.join('').includes('errorId')) throw new Error(club.log.join(''));
});

/** Shows the button and presses it. */
async function press(customId: string, userId: string = keeper) {
  await club.standIn.slash('hold', { with: customId }).reply;
  return club.standIn.component(customId, { userId });
}

const notesOf = (person: string): string => JSON.stringify(club.store.keepFor(person).exportAll());

describe('a button with open options', () => {
  it('opens a form that names them and holds the call', async () => {
    const pressed = await press('ask:note enter?item=12!readings,times,mood');
    const modal = await pressed.modal;
    expect(modal['custom_id']).toBe('ask:note enter?item=12!readings,times,mood');
    expect(modal['title']).toBe('Takes readings for something');
    const labels = list(modal['components']).map(record);
    expect(labels.map((each) => each['label'])).toEqual(['What you tested', 'How often', 'How you feel']);
    expect(labels[0]).toMatchObject({
      description: 'What you tested, e.g. kh 8.2 ca 420',
      component: { type: 4, custom_id: 'readings', style: 2, required: true, max_length: 300 },
    });
    expect(labels[2]).toMatchObject({
      component: { type: 21, required: false, options: [{ value: 'calm' }, { value: 'worried' }] },
    });
    expect(pressed.interaction.callbacks).toHaveLength(1);
  });

  it('runs the command with what was written, for the presser, and replies like it', async () => {
    const pressed = await press('ask:note enter?item=12!readings,times,mood');
    await pressed.modal;
    const sent = club.standIn.submitModal(pressed, { readings: ' kh 8.2 ', times: '3' });
    const reply = await sent.reply;
    expect(reply.text).toContain('12 in Pantry: kh 8.2, 3 times, calm');
    expect(reply.ephemeral).toBe(true);
    expect(sent.interaction.callbacks).toHaveLength(1);
    expect(notesOf(keeper)).toContain('kh 8.2');
  });

  it('works after a restart, and the button for as long as it is there', async () => {
    const pressed = await press(id);
    await pressed.modal;
    await club.restart();
    expect((await club.standIn.submitModal(pressed, { readings: 'ca 430' }).reply).text).toContain('ca 430');
    const again = club.standIn.component(id);
    expect((await again.modal)['custom_id']).toBe(id);
  });

  it('pressed or sent by someone else acts on what is theirs', async () => {
    const before = notesOf(keeper);
    const pressed = await press(id, second);
    await pressed.modal;
    const sent = await club.standIn.submitModal(pressed, { readings: 'ph 8' }, { userId: second }).reply;
    expect(sent.text).toContain('No tank for ph 8.');
    expect(notesOf(keeper)).toBe(before);
  });

  it('works in direct messages', async () => {
    await club.standIn.slash('hold', { with: id }, { dm: true }).reply;
    const pressed = club.standIn.component(id, { dm: true });
    await pressed.modal;
    const reply = await club.standIn.submitModal(pressed, { readings: 'ca 440' }, { dm: true }).reply;
    expect(reply.text).toContain('12 in Pantry: ca 440');
  });
});

describe('a problem with what was written', () => {
  it('is told to the sender alone, with its choices and the form again, filled in', async () => {
    const pressed = await press(id);
    await pressed.modal;
    const reply = await club.standIn.submitModal(pressed, { readings: 'lots' }).reply;
    expect(reply.ephemeral).toBe(true);
    expect(reply.text).toContain('How much is lots?');
    const again = club.standIn.component('ask:note enter?item=12&readings=lots!readings');
    const field = record(record(list((await again.modal)['components'])[0])['component']);
    expect(field['value']).toBe('lots');
    const sent = await club.standIn.submitModal(again, { readings: 'kh 8' }).reply;
    expect(sent.text).toContain('12 in Pantry: kh 8');
    const kh9 = 'run:note enter?item=12&readings=kh 9';
    expect(() => club.standIn.component(kh9), 'once it is put right, the choices are gone').toThrow(
      'No message shows',
    );
    await club.standIn.submitModal(pressed, { readings: 'lots' }).reply;
    const chosen = await club.standIn.component(kh9).reply;
    expect(chosen.text).toContain('kh 9');
  });

  it.each([
    [{ readings: '' }, 'readings is missing.'],
    [{ readings: 'x', times: 'often' }, 'I cannot take that as times.'],
    [{ readings: 'x', times: '12' }, '1 to 9'],
    [{ readings: 'x'.repeat(301) }, 'at most 300 characters'],
  ])('%j', async (fields, sentence) => {
    const pressed = await press('ask:note enter?item=12!readings,times,mood');
    await pressed.modal;
    const reply = await club.standIn.submitModal(pressed, fields).reply;
    expect(reply.text).toContain(sentence);
    expect(reply.ephemeral).toBe(true);
  });

  it('about an option nobody gave offers its choices as buttons', async () => {
    expect((await (await press('run:note later?')).reply).text).toContain('Until when?');
    expect((await club.standIn.component('run:note later?until=in 1 hour').reply).text).toContain(
      'Until in 1 hour.',
    );
  });
});

const textInput = (name: string): Json => ({
  type: 18,
  component: { type: 4, custom_id: name, value: '' },
});

describe('a crafted custom id', () => {
  it.each([
    'ask:note enter?item=12!nothing',
    'ask:note enter?item=12!',
    'ask:note enter?item=12!readings,readings',
    'ask:note enter?item=12!item,readings,times,mood,nothing',
    'ask:note enter?!constructor',
    'ask:nowhere?!readings',
  ])('%s is a private problem', async (customId) => {
    const reply = await (await press(customId)).reply;
    expect(reply.ephemeral).toBe(true);
    expect(reply.text).toMatch(/no longer works|no longer here/);
  });

  it('with a form of anything else is a private problem, and fields nobody asked for are left', async () => {
    const pressed = await press(id);
    await pressed.modal;
    const opened = pressed.interaction.accepted;
    if (opened === undefined) throw new Error('no form');
    const forged = (modal: Json) => ({
      ...pressed,
      interaction: { ...pressed.interaction, accepted: { ...opened, body: { type: 9, data: modal } } },
    });
    const send = async (customId: string, fields: Record<string, string>) => {
      const components = Object.keys(fields).map(textInput);
      return club.standIn.submitModal(forged({ custom_id: customId, components }), fields).reply;
    };
    for (const customId of ['other', 'run:note enter?item=1&readings=x', 'ask:note enter?item=1', 'ask:x']) {
      const reply = await send(customId, { readings: 'x' });
      expect(reply.ephemeral).toBe(true);
      expect(reply.text).toMatch(/no longer works/);
    }
    const extra = await send(id, { readings: 'mg 1300', times: '4', item: 'other' });
    expect(extra.text).toContain('12 in Pantry: mg 1300, 1 times');
    expect(
      (await send('ask:note enter?item=1!fresh,nothing', { nothing: 'x', fresh: 'yes' })).ephemeral,
    ).toBe(true);
  });
});

function file(name: string) {
  return { name, contentType: 'text/csv', data: Buffer.from('a,b') };
}

describe('a form', () => {
  // Types of components: Discord's documentation, from memory: 5 a person, 19 a file, 21 a choice of a few.
  it('has the input that fits each option', async () => {
    const pressed = await press('ask:note enter?item=12!readings,fresh,helper,paper,mood');
    const parts = list((await pressed.modal)['components']).map((each) => record(record(each)['component']));
    expect(parts.map(({ type }) => type)).toEqual([4, 21, 5, 19, 21]);
    expect(parts[3]?.['file_types']).toEqual(['.csv']);
    const fields = { readings: 'kh 8', mood: 'worried', fresh: 'true', helper: second };
    const sent = await club.standIn.submitModal(pressed, fields).reply;
    expect(sent.text).toContain('12 in Pantry: kh 8, 1 times, worried');
  });

  it('takes a file, fetched after a deferral, and refuses one of another ending', async () => {
    const pressed = await press('ask:note enter?item=12!readings,paper');
    await pressed.modal;
    const taken = await club.standIn.submitModal(pressed, { readings: 'kh 8', paper: file('a.csv') }).reply;
    expect(taken.text).toContain('12 in Pantry: kh 8');
    const other = await press('ask:note enter?item=12!readings,paper');
    await other.modal;
    const refused = await club.standIn.submitModal(other, { readings: 'kh 8', paper: file('a.exe') }).reply;
    expect(refused.text).toMatch(/not a file I can read/);
    expect(refused.text).toContain('.csv');
  });
});

describe('custom ids of forms', () => {
  const call = { command: 'remind enter', input: { reminder: '12' }, ask: ['readings'] };

  it('hold the call and what is asked', () => {
    expect(callId(call)).toBe('ask:remind enter?reminder=12!readings');
  });

  it('read back to the same call', () => {
    const values = fc.string({ unit: 'grapheme', maxLength: 12 });
    const input = fc.dictionary(fc.constantFrom('of', 'now'), values, { noNullPrototype: true });
    const ask = fc.subarray(['readings', 'at', 'note'], { minLength: 1 });
    fc.assert(
      fc.property(input, ask, (given, asked) => {
        const made = { command: 'x y', input: given, ask: asked };
        const customId = callId(made);
        fc.pre(customId !== undefined);
        expect(readCallId(customId ?? '')).toEqual(made);
      }),
    );
  });

  it('are left out beyond five options, and held beyond 100 characters', () => {
    expect(callId({ ...call, ask: ['a', 'b', 'c', 'd', 'e', 'f'] }, () => 'h1')).toBeUndefined();
    expect(callId({ ...call, input: { reminder: '1'.repeat(80) } })).toBeUndefined();
    expect(callId({ ...call, input: { reminder: '1'.repeat(80) } }, () => 'h1')).toBe('held:h1');
  });
});
