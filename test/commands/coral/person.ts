import { openStore } from '../../../bot/store/open.ts';
import { readLine } from '../../../bot/terminal/read.ts';
import type { Answer } from '../../../commands/answer.ts';
import { runWithDefaults } from '../../../commands/defaults.ts';
import { commands } from '../../../commands/index.ts';
import type { Keep } from '../../../commands/keep.ts';

/** 5 May 2026, noon. */
export const NOW_MS = Date.UTC(2026, 4, 5, 12);

export interface Person {
  readonly keep: Keep;
  /** Runs a typed line as that member. */
  readonly say: (line: string) => Answer;
}

/** Two members of one new store, each with a tank of 120 x 50 x 50 cm inside and water to 46 cm. */
export function twoPersons(): readonly [Person, Person] {
  const store = openStore({ file: ':memory:', nowMs: () => NOW_MS });
  return [person(store.keepFor('100000000000000001')), person(store.keepFor('100000000000000002'))];
}

function person(keep: Keep): Person {
  const say = (typed: string): Answer => {
    const line = readLine(typed, commands);
    if (line.kind !== 'command') throw new Error(`not a command: ${typed}`);
    return run(keep, line.path.join(' '), line.input);
  };
  say('/tank new name:Pantry size:120 x 50 x 50 cm measured:inside height:46 cm');
  return { keep, say };
}

/** Runs a command as a button does. */
export function run(keep: Keep, name: string, input: Readonly<Record<string, unknown>>): Answer {
  const command = commands.find(({ path }) => path.join(' ') === name);
  if (command === undefined) throw new Error(`no command ${name}`);
  return runWithDefaults(command, input, { nowMs: NOW_MS, keep });
}
