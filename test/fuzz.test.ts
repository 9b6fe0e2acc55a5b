import { lazyReader } from '../bot/reader/load.ts';
import { describe, expect, it } from 'vitest';
import { ask } from './ask.ts';
import { commands } from '../commands/index.ts';
import { optionsOf } from '../commands/options.ts';
import { Problem } from '../core/problem.ts';
import { readQuantity } from '../core/quantity/read.ts';
import { quantities, type QuantityKind } from '../core/quantity/unit.ts';
import { readSalinity } from '../core/water/salinity-reading.ts';
import type { Answer } from '../commands/answer.ts';
import { textOf } from './commands/text.ts';
import { hostileSample } from './hostile.ts';

const context = { reader: lazyReader, nowMs: 0 };
const BAD_NUMBER =
  /(?<![a-z])(?:NaN|Infinity|undefined|null)(?![a-z])|(?<![\w.)\]-])-\d[\d.]* ?(?:g|kg|mg|L|mL|US gal)\b/i;

/** Texts that hold a bad number themselves: an echo of them proves nothing. */
const MISLEADING = /nan|infinity|undefined|null|-\d/i;

/** What our own sentences print, with what the member typed taken out: an echo may hold anything. */
function ownText(answer: Answer): string {
  return textOf({ ...answer, read: [] });
}

function outcome(run: () => Answer | number): Answer | number | Problem {
  try {
    return run();
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}

/** 20,000 texts through the slowest of them take seconds here and more on a busy machine. */
const PATIENCE = { timeout: 300_000 };

describe('20,000 hostile texts', PATIENCE, () => {
  const texts = hostileSample(1);

  it('every quantity reader gives a number in its range or a Problem', () => {
    const kinds = Object.keys(quantities) as QuantityKind[];
    const bad: string[] = [];
    let read = 0;
    for (const [index, text] of texts.entries()) {
      for (const kind of [kinds[index % kinds.length], 'volume'] as QuantityKind[]) {
        const found = outcome(() => readQuantity(kind, text, { field: 'x' }).value);
        if (typeof found !== 'number') continue;
        read += 1;
        const inside = found >= quantities[kind].min && found <= quantities[kind].max;
        if (!inside) bad.push(`${kind} ${JSON.stringify(text)} -> ${found}`);
      }
    }
    expect(bad).toEqual([]);
    expect(read).toBeGreaterThan(300);
  });

  it('the salinity reader gives a salinity a sea can have or a Problem', () => {
    const bad: string[] = [];
    for (const text of texts) {
      const found = outcome(() => readSalinity(text, { field: 'x' }).practicalSalinity);
      if (typeof found === 'number' && !(found >= 0 && found <= 42.5))
        bad.push(`${JSON.stringify(text)} -> ${found}`);
    }
    expect(bad).toEqual([]);
  });

  it('plain words end in an answer without a bad number, or a Problem', () => {
    const bad: string[] = [];
    let answered = 0;
    for (const text of texts) {
      const found = outcome(() => ask(text, context));
      if (found instanceof Problem || typeof found === 'number') continue;
      answered += 1;
      if (!MISLEADING.test(text) && BAD_NUMBER.test(ownText(found)))
        bad.push(`${JSON.stringify(text)} -> ${ownText(found)}`);
    }
    expect(bad).toEqual([]);
    expect(answered).toBeGreaterThan(5000);
  });
});

describe('every option of every command', PATIENCE, () => {
  const texts = hostileSample(2);
  const targets = commands.flatMap((command) =>
    optionsOf(command.options).map((option) => ({ command, option })),
  );

  it('takes hostile text without anything but a Problem', () => {
    const bad: string[] = [];
    let answered = 0;
    for (const [index, text] of texts.entries()) {
      const target = targets[index % targets.length];
      if (target === undefined) throw new Error('no commands');
      const { command, option } = target;
      const input = {
        ...exampleInput(
          command.example,
          optionsOf(command.options).map(({ name }) => name),
        ),
        [option.name]: text,
      };
      const found = outcome(() => command.run(input, context));
      if (found instanceof Problem || typeof found === 'number') continue;
      answered += 1;
      if (MISLEADING.test(text) || !BAD_NUMBER.test(ownText(found))) continue;
      bad.push(`${command.path.join(' ')} ${option.name} ${JSON.stringify(text)} -> ${ownText(found)}`);
    }
    expect(bad).toEqual([]);
    expect(answered).toBeGreaterThan(200);
  });
});

/** The options of an example line, split at its known option names. */
function exampleInput(example: string, names: readonly string[]): Record<string, string> {
  const parts = example.split(new RegExp(String.raw`\s(${names.join('|') || '-'}):`)).slice(1);
  const input: Record<string, string> = {};
  for (let i = 0; i + 1 < parts.length; i += 2) input[parts[i] ?? ''] = (parts[i + 1] ?? '').trim();
  return input;
}
