import { z } from 'zod';
import { answer } from '../../../commands/answer.ts';
import type { NextAction } from '../../../commands/answer.ts';
import { askCommand } from '../../../commands/ask.ts';
import { defineCommand } from '../../../commands/command.ts';
import type { Command } from '../../../commands/command.ts';
import { doseCommands } from '../../../commands/dose.ts';
import { checkupCommand } from '../../../commands/checkup.ts';
import { logCommands } from '../../../commands/log.ts';
import type { Keep, TankProfile } from '../../../commands/keep.ts';
import { mydataCommands } from '../../../commands/mydata.ts';
import { textOption } from '../../../commands/options.ts';
import { tankCommands } from '../../../commands/tank.ts';
import { readCallId } from '../../../bot/discord/asked/call.ts';
import { pretended } from '../../action.ts';

export const profile = (name: string, netVolumeL: number): TankProfile => ({
  name,
  kind: 'mixed',
  netVolumeL,
  volumeBasis: 'counted in buckets',
  units: {},
  targets: {},
});

/** A tank with a reading and a note. */
export function moveIn(keep: Keep, name: string, netVolumeL: number, note: string): void {
  const tank = keep.addTank(profile(name, netVolumeL));
  keep.addEntry(tank.id, { atMs: 0, values: [{ parameter: 'alkalinity', value: 8.3 }], note });
}

/** Shows a button of any custom id that is one of ours in form, whatever it names. */
const offerCommand = defineCommand({
  path: ['offer'],
  summary: 'Shows a button',
  example: '/offer with:run:about?',
  options: z.strictObject({ with: textOption('Its custom id', { max: 100 }) }),
  run: (input) => {
    const call = readCallId(input.with);
    const next: readonly NextAction[] = call === undefined ? [] : [pretended({ label: 'Press', ...call })];
    return answer({ headline: 'Press it.', next });
  },
});

export const memberCommands: readonly Command[] = [
  askCommand,
  ...doseCommands,
  ...tankCommands,
  ...logCommands,
  checkupCommand,
  ...mydataCommands,
  offerCommand,
];
