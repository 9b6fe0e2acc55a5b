import { readLine } from '../../../bot/terminal/read.ts';
import { openStore } from '../../../bot/store/open.ts';
import type { Answer } from '../../../commands/answer.ts';
import { runWithDefaults } from '../../../commands/defaults.ts';
import type { Keep } from '../../../commands/keep.ts';
import { tankCommands } from '../../../commands/tank.ts';

/** The day the tests run on: 5 May 2026, noon. */
export const NOW_MS = Date.UTC(2026, 4, 5, 12);

/** Two members of one new store. */
export function twoMembers(): readonly [Keep, Keep] {
  const store = openStore({ file: ':memory:', nowMs: () => NOW_MS });
  return [store.keepFor('100000000000000001'), store.keepFor('100000000000000002')];
}

/** Runs a typed line as that member, as the terminal room and the chat do. */
export function as(keep: Keep | undefined): (line: string) => Answer {
  return (typed) => {
    const line = readLine(typed, tankCommands);
    if (line.kind !== 'command') throw new Error(`not a command: ${typed}`);
    const command = tankCommands.find(({ path }) => path.join(' ') === line.path.join(' '));
    if (command === undefined) throw new Error(`no command ${typed}`);
    return runWithDefaults(command, line.input, { nowMs: NOW_MS, ...(keep === undefined ? {} : { keep }) });
  };
}
