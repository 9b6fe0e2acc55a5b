import { z } from 'zod';
import { answer } from '../../../commands/answer.ts';
import { defineCommand } from '../../../commands/command.ts';
import type { Command } from '../../../commands/command.ts';
import { idOption, quantityOption } from '../../../commands/options.ts';
import { pretended } from '../../action.ts';

/** Says what is known of a channel of this server. */
const whereCommand = defineCommand({
  path: ['where'],
  summary: 'Who may do what in a channel',
  example: '/where channel:123456789012345678',
  options: z.strictObject({ channel: idOption('channel', 'A channel') }),
  run: ({ channel }, { server }) =>
    answer({
      headline: `write ${server?.mayWrite(channel)}, manage ${server?.mayManage}`,
      read: [`lacks ${server?.lacks(channel).join(', ') || 'nothing'}`],
      facts: [{ label: 'here', value: String(server?.channelId === channel) }],
    }),
});

/** Says back whom it was given. */
const whomCommand = defineCommand({
  path: ['whom'],
  summary: 'Says back ids',
  example: '/whom member:123456789012345678',
  options: z.strictObject({
    member: idOption('member', 'A member'),
    channel: idOption('channel', 'A channel').optional(),
    role: idOption('role', 'A role').optional(),
  }),
  run: ({ member, channel, role }) =>
    answer({
      headline: `${member} ${channel ?? '-'} ${role ?? '-'}`,
      facts: [
        { label: 'member', value: 'this one', personId: member },
        ...(channel === undefined ? [] : [{ label: 'channel', value: 'there', channelId: channel }]),
        ...(role === undefined ? [] : [{ label: 'role', value: 'those', roleId: role }]),
      ],
      next: [pretended({ label: 'Again', command: 'whom', input: { member } })],
    }),
});

/** Says how a volume was read. */
const poolCommand = defineCommand({
  path: ['pool'],
  summary: 'Reads a volume',
  example: '/pool volume:75 gal',
  options: z.strictObject({ volume: quantityOption('volume', 'Net water volume', 'volume').optional() }),
  run: ({ volume }) => answer({ headline: `volume ${volume ?? 'unknown'}` }),
});

export const probeCommands: readonly Command[] = [whereCommand, whomCommand, poolCommand];
