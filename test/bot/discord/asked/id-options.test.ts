import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { definitions } from '../../../../bot/discord/register/definition.ts';
import { channelIds, stewardRole, userIds } from '../../../discord/standin/world.ts';
import { openClub } from '../club.ts';
import type { Club } from '../club.ts';
import { formCommands } from './form-commands.ts';
import { probeCommands } from '../probe-commands.ts';

let club: Club;

beforeEach(async () => {
  club = await openClub({ commands: [...probeCommands, ...formCommands] });
});

afterEach(() => club.close());

describe('options that are ids', () => {
  it('are picked from lists of Discord', () => {
    const whom = definitions(probeCommands).find(({ name }) => name === 'whom');
    expect(whom?.options).toEqual([
      { type: 6, name: 'member', description: 'A member', required: true },
      {
        type: 7,
        name: 'channel',
        description: 'A channel',
        required: false,
        channel_types: [0, 2, 5, 10, 11, 12, 13, 15, 16],
      },
      { type: 8, name: 'role', description: 'A role', required: false },
    ]);
  });

  it('reach the command as text, and names come back without a ping', async () => {
    const given = { member: { user: userIds.second }, channel: { channel: channelIds.chat } };
    const reply = await club.standIn.slash('whom', { ...given, role: { role: stewardRole } }).reply;
    expect(reply.text).toContain(`### ${userIds.second} ${channelIds.chat} ${stewardRole}`);
    expect(reply.text).toContain(`- member: this one <@${userIds.second}>`);
    expect(reply.text).toContain(`- channel: there <#${channelIds.chat}>`);
    expect(reply.text).toContain(`- role: those <@&${stewardRole}>`);
    expect(reply.pings).toEqual([]);
    expect(reply.allowedMentions?.['parse']).toEqual([]);
  });

  it('are text on buttons; a wrong one is a private problem', async () => {
    const { standIn } = club;
    await standIn.slash('whom', { member: { user: userIds.second } }).reply;
    const pressed = await standIn.component(`run:whom?member=${userIds.second}`).reply;
    expect(pressed.text).toContain(userIds.second);
    await standIn.slash('hold', { with: 'run:whom?member=Teo' }).reply;
    const wrong = await standIn.component('run:whom?member=Teo').reply;
    expect(wrong.ephemeral).toBe(true);
    expect(wrong.text).toContain('the id of a member: 17 to 20 digits');
  });
});
