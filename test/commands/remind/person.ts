import { lazyReader } from '../../../bot/reader/load.ts';
import { openStore } from '../../../bot/store/open.ts';
import { readLine } from '../../../bot/terminal/read.ts';
import type { Answer, NextAction } from '../../../commands/answer.ts';
import { askCommand } from '../../../commands/ask.ts';
import type { Asking, Command } from '../../../commands/command.ts';
import { runWithDefaults } from '../../../commands/defaults.ts';
import type { Keep } from '../../../commands/keep.ts';
import { logCommands } from '../../../commands/log.ts';
import { optionsOf } from '../../../commands/options.ts';
import { zoneCommand } from '../../../commands/remind/zone.ts';
import { remindCommands } from '../../../commands/remind.ts';
import { settled } from '../../../commands/remind/progress.ts';
import { dueOf, wakeOf } from '../../../commands/remind/wake.ts';
import type { Server } from '../../../commands/server.ts';
import { tankCommands } from '../../../commands/tank.ts';

const all: readonly Command[] = [...remindCommands, zoneCommand, ...tankCommands, ...logCommands];

/** Saturday 3 January 2026, 08:00 in Berlin. */
export const START_MS = Date.UTC(2026, 0, 3, 7);
export const HOUR_MS = 3_600_000;

/** Someone who types lines, with a clock all people of the club share. */
export interface Person {
  readonly keep: Keep;
  readonly run: (line: string) => Answer;
  readonly press: (action: NextAction | undefined, filled?: Readonly<Record<string, string>>) => Answer;
  readonly ask: (text: string) => Answer;
}

export interface Club {
  readonly owner: Person;
  readonly other: Person;
  /** Lets time go by; what falls due is sent, as by the clock loop. Returns what was sent to the owner. */
  readonly wait: (hours: number) => readonly string[];
  readonly nowMs: () => number;
}

/** Two members of a new store; `extra` is what the owner's commands know besides. */
export function club(
  extra: { readonly zone?: string; readonly server?: Server } = { zone: 'Europe/Berlin' },
): Club {
  let nowMs = START_MS;
  const store = openStore({ file: ':memory:', nowMs: () => nowMs });
  const person = (id: string): Person => {
    const keep = store.keepFor(id);
    const context = (): Asking => ({
      nowMs,
      keep,
      reader: lazyReader,
      ...(extra.server === undefined ? {} : { isShared: true }),
      ...extra,
    });
    return {
      keep,
      run: (line) => {
        const read = readLine(line, all);
        if (read.kind !== 'command') throw new Error(`not a command: ${line}`);
        return runWithDefaults(commandOf(read.path.join(' ')), read.input, context());
      },
      press: (action, filled = {}) => {
        if (action === undefined) throw new Error('no such button');
        const command = commandOf(action.command);
        return runWithDefaults(command, typed(command, { ...action.input, ...filled }), context());
      },
      ask: (question) => runWithDefaults(askCommand, { question }, context()),
    };
  };
  const owner = person('100000000000000001');
  return {
    owner,
    other: person('100000000000000002'),
    nowMs: () => nowMs,
    wait: (hours) => {
      const sent: string[] = [];
      const endMs = nowMs + hours * HOUR_MS;
      for (;;) {
        const next = owner.keep
          .reminders()
          .map((one) => ({ one, wakeMs: wakeOf(one) ?? Infinity }))
          .sort((a, b) => a.wakeMs - b.wakeMs)[0];
        if (next === undefined || next.wakeMs > endMs) break;
        nowMs = Math.max(nowMs, next.wakeMs);
        sent.push(`${new Date(nowMs).toISOString().slice(0, 16)} ${next.one.text}`);
        const dueMs = dueOf(next.one) ?? 0;
        owner.keep.moveReminder(next.one.id, next.one.anchor, settled(next.one, dueMs, nowMs));
      }
      nowMs = endMs;
      return sent;
    },
  };
}

function commandOf(name: string): Command {
  const command = all.find(({ path }) => path.join(' ') === name);
  if (command === undefined) throw new Error(`no command ${name}`);
  return command;
}

function typed(command: Command, input: Readonly<Record<string, string>>): Readonly<Record<string, unknown>> {
  const isNumber = new Set(
    optionsOf(command.options)
      .filter(({ kind }) => kind === 'integer')
      .map(({ name }) => name),
  );
  return Object.fromEntries(
    Object.entries(input).map(([name, value]) => [name, isNumber.has(name) ? Number(value) : value]),
  );
}

/** The button of an answer by its label. */
export function button({ next }: Answer, label: string): NextAction | undefined {
  return next.find((action) => action.label === label);
}
