import { readFileSync } from 'node:fs';
import { club, fillTank } from '../../bot/demo/club.ts';
import { fillCorals } from '../../bot/demo/corals.ts';
import { lazyReader } from '../../bot/reader/load.ts';
import { openStore } from '../../bot/store/open.ts';
import { readLine } from '../../bot/terminal/read.ts';
import type { Answer } from '../../commands/answer.ts';
import type { Asking } from '../../commands/command.ts';
import { runWithDefaults } from '../../commands/defaults.ts';
import { commands } from '../../commands/index.ts';
import { forAsker, wordsOf } from '../../commands/for-asker.ts';
import { commandNamed, nameOf } from '../../commands/named.ts';
import type { Keep } from '../../commands/keep.ts';
import { readBatch } from '../../core/language/labelled.ts';
import { Problem } from '../../core/problem.ts';
import { ask } from '../ask.ts';
import { asked, askedOfGuide } from '../corpus.ts';

const NOW_MS = Date.UTC(2026, 5, 1, 18);
const BATCHES = ['v2', 'v6', 'v9', 'v12', 'v14'] as const;

/** An answer to something a member may type. */
export interface Answered {
  readonly typed: string;
  readonly answer: Answer;
}

/** The first member of the invented club, with a year of readings and five corals. */
function aMember(): Keep {
  const keep = openStore({ file: ':memory:', nowMs: () => NOW_MS }).keepFor('local');
  for (const tank of club.slice(0, 1)) fillTank(keep, tank, NOW_MS);
  for (const { id } of keep.tanks()) fillCorals(keep, id, NOW_MS);
  return keep;
}

/** @throws Problem where the member can put something right. */
export function answerTo(typed: string, asking: Asking): Answer {
  const line = readLine(typed, commands);
  if (line.kind !== 'command') return forAsker(ask(typed, asking), typed, asking);
  const command = commandNamed(nameOf(line), commands);
  if (command === undefined) throw new Error(`no command ${nameOf(line)}`);
  return forAsker(runWithDefaults(command, line.input, asking), wordsOf(line.input), asking);
}

/** What is asked back as a Problem has no answer to measure. */
function attempt({ typed, asking }: RealInput): readonly Answered[] {
  try {
    return [{ typed, answer: answerTo(typed, asking) }];
  } catch (error) {
    if (error instanceof Problem) return [];
    throw error;
  }
}

/** Something a member may type, and who they are. */
export interface RealInput {
  readonly typed: string;
  readonly asking: Asking;
}

/** Every command's example as a member with a tank and as one without, the cases, and five measuring batches. */
export function realInputs(): readonly RealInput[] {
  const none: Asking = { nowMs: NOW_MS, reader: lazyReader };
  const messages = BATCHES.flatMap((name) =>
    readBatch(readFileSync(`core/language/sentences/${name}.jsonl`, 'utf8')).lines.map(({ text }) => text),
  );
  const examples = commands.map(({ example }) => example);
  return [
    ...examples.map((typed) => ({ typed, asking: { ...none, keep: aMember(), zone: 'Europe/Berlin' } })),
    ...[...examples, ...Object.values(asked), ...Object.values(askedOfGuide), ...messages].map((typed) => ({
      typed,
      asking: none,
    })),
  ];
}

/** What they are answered, where they are. */
export function realAnswers(): readonly Answered[] {
  return realInputs().flatMap(attempt);
}
