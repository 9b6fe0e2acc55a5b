import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { toPng } from '../../../bot/png.ts';
import { ask } from '../../ask.ts';
import type { InteractionHandle } from '../../discord/standin/interaction-handle.ts';
import { userIds } from '../../discord/standin/world.ts';
import { openClub } from './club.ts';
import type { Club } from './club.ts';
import { memberCommands, profile } from './members.ts';

const { keeper, second } = userIds;
const head = 'time,parameter,value,unit,note';
const good = [
  head,
  '2023-11-01T10:00:00Z,alkalinity,8.1,dKH,',
  '2023-11-02T10:00:00Z,alkalinity,8.3,dKH,"after, the change"',
  '2023-11-02T10:00:00Z,calcium,430,mg/L,',
].join('\r\n');

let club: Club;

beforeEach(async () => {
  club = await openClub({ commands: memberCommands, ask, toPng });
  for (const id of [keeper, second]) club.store.keepFor(id).addTank(profile('Pantry', 250));
});

afterEach(() => club.close());

function send(text: string, userId: string = keeper): InteractionHandle {
  const file = { name: 'readings.csv', contentType: 'text/csv', data: new TextEncoder().encode(text) };
  return club.standIn.slash('log', { file: { file } }, { subcommand: 'import', userId });
}

function readingsOf(id: string) {
  const keep = club.store.keepFor(id);
  return keep.readings(keep.tankInUse()?.id ?? 0, {});
}

describe('a log that is imported', () => {
  it('is kept exactly, for the member who sent it alone', async () => {
    const used = send(`\ufeff${good}`);
    const reply = await used.reply;
    expect(reply.ephemeral).toBe(true);
    expect(reply.text).toContain('3 readings of readings.csv logged for Pantry');
    expect((await used.acknowledged).type).toBe(5);
    expect(readingsOf(keeper)).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ parameter: 'alkalinity', value: 8.1, atMs: Date.UTC(2023, 10, 1, 10) }),
        expect.objectContaining({ parameter: 'alkalinity', value: 8.3, note: 'after, the change' }),
        expect.objectContaining({ parameter: 'calcium', value: 430, atMs: Date.UTC(2023, 10, 2, 10) }),
      ]),
    );
    expect(readingsOf(keeper)).toHaveLength(3);
    expect(readingsOf(second)).toEqual([]);
  });

  it('is drawn for its member alone', async () => {
    await send(good).reply;
    const used = club.standIn.slash('log', { of: 'alkalinity' }, { subcommand: 'trend' });
    const reply = await used.reply;
    expect((await used.acknowledged).type).toBe(5);
    expect(reply.ephemeral).toBe(true);
    expect(reply.files.map(({ name }) => name)).toEqual([expect.stringMatching(/^[a-z0-9-]+\.png$/)]);
    expect(reply.message['attachments']).toMatchObject([{ description: expect.stringContaining('8.3') }]);
  });

  it('comes back as a file that can be imported by another', async () => {
    await send(good).reply;
    const out = await club.standIn.slash('log', {}, { subcommand: 'export' }).reply;
    expect(out.ephemeral).toBe(true);
    const text = Buffer.from(out.files[0]?.data ?? []).toString();
    await send(text, second).reply;
    expect(readingsOf(second)).toEqual(readingsOf(keeper));
  });

  it('is refused whole for one bad line, to the asker only', async () => {
    const reply = await send(`${good}\r\nyesterday,alkalinity,8,dKH,`).reply;
    expect(reply.ephemeral).toBe(true);
    expect(reply.text).toContain('line 5');
    expect(readingsOf(keeper)).toEqual([]);
    expect(club.log.join('')).not.toMatch(/errorId|readings\.csv/);
  });
});
