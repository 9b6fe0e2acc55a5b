import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { userIds } from '../../discord/standin/world.ts';
import { leaveNotice } from '../noticed.ts';
import { nowMs, openClub } from './club.ts';
import type { Club } from './club.ts';
import { demoAsk } from './demo.ts';
import { fileCommands } from './demo-files.ts';
import { probeCommands } from './probe-commands.ts';

const notice = 'The reminder to rinse the sponge was not delivered: direct messages are closed.';

let club: Club;

beforeEach(async () => {
  club = await openClub({ commands: [...probeCommands, ...fileCommands], ask: demoAsk });
  leaveNotice(club.store, userIds.keeper, nowMs, notice);
});

afterEach(() => club.close());

describe('a notice', () => {
  it('comes first in the next answer, which is then for its member alone, and only once', async () => {
    const { standIn } = club;
    const other = await standIn.slash('pool', { volume: '1 L' }, { userId: userIds.second }).reply;
    expect(other.ephemeral).toBe(false);
    expect(other.text).not.toContain('sponge');
    const reply = await standIn.slash('pool', { volume: '1 L' }).reply;
    expect(reply.text.split('\n').slice(0, 2)).toEqual([expect.stringMatching(/^### /), notice]);
    expect(reply.ephemeral).toBe(true);
    const next = await standIn.slash('pool', { volume: '1 L' }).reply;
    expect(next.text).not.toContain('sponge');
    expect(next.ephemeral).toBe(false);
  });

  it('is kept from a mention, and given with a direct message', async () => {
    expect((await club.standIn.mention('hello').reply).text).not.toContain('sponge');
    expect((await club.standIn.directMessage('hello').reply).text).toContain(notice);
  });

  it('makes an answer with a picture private before it is drawn', async () => {
    const used = club.standIn.slash('chart');
    const reply = await used.reply;
    expect(reply.text).toContain(notice);
    expect(reply.ephemeral).toBe(true);
  });

  it('stays while someone types, and through a problem', async () => {
    const { standIn } = club;
    await standIn.autocomplete('pool', { volume: '7' }, { focused: 'volume' }).choices;
    const problem = await standIn.slash('pool', { volume: ' ' }).reply;
    expect(problem.text).not.toContain('sponge');
    expect((await standIn.slash('pool').reply).text).toContain(notice);
  });
});
