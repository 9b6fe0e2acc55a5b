import { PermissionFlagsBits } from 'discord.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { toPng } from '../../../bot/png.ts';
import { MAX_FILE } from '../../../commands/options.ts';
import { everyComponent } from '../../discord/standin/component.ts';
import type { InteractionHandle } from '../../discord/standin/interaction-handle.ts';
import type { Sent } from '../../discord/standin/message.ts';
import type { GivenFile } from '../../discord/standin/slash-options.ts';
import { channelIds, denying } from '../../discord/standin/world.ts';
import { openClub } from './club.ts';
import type { Club } from './club.ts';
import { longReply } from './whole-text.ts';
import { alt, drawing, fileCommands } from './demo-files.ts';

let club: Club;

beforeAll(async () => {
  club = await openClub({ commands: fileCommands, ask: () => drawing, toPng });
});

afterAll(() => club.close());

function componentOf(sent: Sent, type: number): Readonly<Record<string, unknown>> | undefined {
  return everyComponent(sent.components).find((each) => each['type'] === type);
}

function paper(data: string | Uint8Array, name = 'papers.csv'): { readonly file: GivenFile } {
  const bytes = typeof data === 'string' ? new TextEncoder().encode(data) : data;
  return { file: { name, contentType: 'text/csv', data: bytes } };
}

function send(data: string | Uint8Array, more: Record<string, string> = {}): InteractionHandle {
  return club.standIn.slash('papers', { file: paper(data), ...more }, { subcommand: 'in' });
}

describe('a picture', () => {
  it('arrives as a PNG with alt text in the gallery, after a deferral', async () => {
    const used = club.standIn.slash('chart');
    const reply = await used.reply;
    expect((await used.acknowledged).type).toBe(5);
    expect(reply.ephemeral).toBe(false);
    const [file] = reply.files;
    expect(file?.name).toBe('alk-trend.png');
    expect(
      Buffer.from(file?.data ?? [])
        .subarray(1, 4)
        .toString(),
    ).toBe('PNG');
    expect(componentOf(reply, 12)?.['items']).toEqual([
      { media: { url: 'attachment://alk-trend.png' }, description: alt },
    ]);
    expect(reply.message['attachments']).toMatchObject([{ filename: 'alk-trend.png', description: alt }]);
    expect(reply.text).toContain('Test again.');
  });

  it('is drawn for a button and for words too', async () => {
    const again = 'run:chart?';
    const { standIn } = club;
    await standIn.slash('papers', { file: paper('x'), with: 'again' }, { subcommand: 'in' }).reply;
    const pressed = standIn.component(again);
    expect((await pressed.reply).files.map(({ name }) => name)).toEqual(['alk-trend.png']);
    expect((await pressed.acknowledged).type).toBe(5);
    const told = await standIn.mention('draw').reply;
    expect(told.files.map(({ name }) => name)).toEqual(['alk-trend.png']);
    expect(componentOf(told, 12)).toBeDefined();
  });

  it('is told in words where the bot may attach no files', async () => {
    const { channels } = club.standIn.world;
    const before = channels.get(channelIds.numbers) ?? {};
    const overwrites = [denying(PermissionFlagsBits.AttachFiles)];
    channels.set(channelIds.numbers, { ...before, permission_overwrites: overwrites });
    const told = await club.standIn.mention('draw', { channelId: channelIds.numbers }).reply;
    channels.set(channelIds.numbers, before);
    expect(told.files).toEqual([]);
    expect(told.text).toContain('Test again.');
    expect(told.text).toContain(alt);
  });

  it('that cannot be drawn leaves the answer, with the alt text, and an id in the log', async () => {
    const reply = await club.standIn.slash('chart', { svg: 'no drawing' }).reply;
    expect(reply.files).toEqual([]);
    expect(reply.text).toContain('Drawn.');
    expect(reply.text).toContain('Test again.');
    expect(reply.text).toContain(alt);
    expect(club.log.find((line) => line.includes('a picture was not drawn'))).toMatch(
      /"errorId":"[0-9a-f]{8}"/,
    );
    expect(club.log.join('')).not.toContain('no drawing');
  });
});

describe('a table', () => {
  it('is a block of aligned columns, answered with one callback', async () => {
    const used = club.standIn.slash('sheet', { rows: 10, cell: 'clear' });
    expect((await used.reply).text).toContain(
      ['```', 'day  alkalinity  note', '1    8.3 dKH     clear', '2    8.3 dKH     clear'].join('\n'),
    );
    expect((await used.acknowledged).type).toBe(4);
    expect((await used.reply).ephemeral).toBe(true);
  });

  it('cannot be left by a cell, and pings nobody', async () => {
    const cell = '``` @everyone ```\n# out';
    const reply = await club.standIn.slash('sheet', { rows: 1, cell }).reply;
    expect(reply.pings).toEqual([]);
    const { pings, text } = await longReply(club, reply);
    expect(text.match(/`+/g)).toEqual(['```', '```']);
    expect(text.split('\n').slice(-2)[0]).toContain('# out');
    expect(pings).toEqual([]);
  });

  it('counts the rows that have no room', async () => {
    const reply = await club.standIn.slash('sheet', { rows: 5000, cell: 'a wide note '.repeat(9) }).reply;
    expect(reply.text).toMatch(/```\nday  alkalinity\n1 [^]*\n8    8\.3 dKH\n```/);
    const { text } = await longReply(club, reply);
    const shown = text.split('\n').filter((line) => /^\d+ +8\.3/.test(line)).length;
    expect(text.length).toBeLessThanOrEqual(4000);
    expect(shown).toBeGreaterThan(50);
    expect(text.endsWith(`and ${5000 - shown} more`)).toBe(true);
  });
});

describe('a file given back', () => {
  it('arrives as an attachment for the asker only, under a safe name', async () => {
    const reply = await club.standIn.slash('papers', {}, { subcommand: 'out' }).reply;
    expect(reply.ephemeral).toBe(true);
    expect(reply.files.map(({ name }) => name)).toEqual(['my-papers.csv']);
    expect(Buffer.from(reply.files[0]?.data ?? []).toString()).toBe('day;alk\n1;8,3\n');
    expect(componentOf(reply, 13)?.['file']).toEqual({ url: 'attachment://my-papers.csv' });
  });

  it('too large for Discord ends the deferral with an id that is in the log', async () => {
    const tooLarge = { code: 40005, message: 'Request entity too large' };
    club.standIn.failNext({ method: 'PATCH' }, 413, tooLarge);
    const reply = await club.standIn.slash('papers', {}, { subcommand: 'out' }).reply;
    const id = /Error ([0-9a-f]{8})/.exec(reply.text)?.[1];
    expect(reply.ephemeral).toBe(true);
    expect(club.log.join('')).toContain(`"errorId":"${id}"`);
  });
});

describe('a file taken', () => {
  it('is fetched after a deferral and read with its byte order mark', async () => {
    const used = send('\ufeffday;alk\n1;8,3 µ\n');
    const reply = await used.reply;
    expect(reply.text).toContain('papers.csv holds 17 characters from feff, as is');
    expect((await used.acknowledged).type).toBe(5);
    expect(reply.ephemeral).toBe(true);
  });

  it.each([
    ['pictures', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0, 0, 0xff])],
    ['UTF-16', new Uint8Array([0xff, 0xfe, 0x64, 0x00, 0x61, 0x00])],
    ['text with a zero in it', 'day\0alk'],
  ])('is refused where it is %s', async (_, data) => {
    const reply = await send(data).reply;
    expect(reply.ephemeral).toBe(true);
    expect(reply.text).toContain('That file is not plain text.');
  });

  it('is taken at the limit and refused above it, without being fetched', async () => {
    expect((await send('x'.repeat(MAX_FILE)).reply).text).toContain(`holds ${MAX_FILE} characters`);
    const reply = await send('x'.repeat(MAX_FILE + 1)).reply;
    expect(reply.ephemeral).toBe(true);
    expect(reply.text).toContain('That file is too large for me to read.');
  });

  it('is not read twice when the interaction is delivered twice', async () => {
    const twice = club.standIn.slash('papers', { file: paper('a') }, { subcommand: 'in', twice: true });
    await twice.reply;
    await send('b').reply;
    expect(twice.interaction.callbacks).toHaveLength(1);
    expect(twice.interaction.edits).toHaveLength(1);
  });

  it('is not read when Discord no longer takes an answer', async () => {
    const late = club.standIn.slash('papers', { file: paper('a') }, { subcommand: 'in', late: true });
    expect((await late.callback()).code).toBe(10062);
    await send('b').reply;
    expect(late.interaction.edits).toEqual([]);
  });

  it('offers no button for a problem, as a button holds no file', async () => {
    const reply = await send('a', { with: 'guess' }).reply;
    expect(reply.text).toContain('Comma or point?');
    expect(reply.text).toContain('Write one of these: comma; point.');
    expect(componentOf(reply, 2)).toBeUndefined();
  });
});
