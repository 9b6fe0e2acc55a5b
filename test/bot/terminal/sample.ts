import { lazyReader } from '../../../bot/reader/load.ts';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { z } from 'zod';
import { answer, type Answer } from '../../../commands/answer.ts';
import { defineCommand, type Command } from '../../../commands/command.ts';
import { quantityOption, textOption } from '../../../commands/options.ts';
import { Problem } from '../../../core/problem.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { openStore } from '../../../bot/store/open.ts';
import { LOCAL_PERSON } from '../../../bot/store/people.ts';
import type { Keep } from '../../../commands/keep.ts';
import type { Desk } from '../../../bot/terminal/desk.ts';
import { pretended } from '../../action.ts';

const amount = defineCommand({
  path: ['dose', 'amount'],
  summary: 'How much of a compound raises a value',
  example: '/dose amount of:alkalinity now:7.2 dKH goal:8.4 dKH with:soda ash volume:75 gal',
  options: z.strictObject({
    of: textOption('What is raised', { suggest: 'parameter' }),
    now: quantityOption('alkalinity', 'The reading now'),
    goal: quantityOption('alkalinity', 'The value wanted'),
    with: textOption('The compound', { suggest: 'compound' }).optional(),
    volume: quantityOption('volume', 'Net water volume').optional(),
  }),
  run: (input) => {
    const now = readQuantity('alkalinity', input.now, { field: 'now' });
    return answer({
      headline: `${input.of} from ${now.written} ${now.unit} to ${input.goal}`,
      next: [
        pretended({ label: 'Plan the days', command: 'dose pace', input: { days: '3', form: 'flakes' } }),
      ],
    });
  },
});

const pace = defineCommand({
  path: ['dose', 'pace'],
  summary: 'Over how many days a rise is spread',
  example: '/dose pace days:3 form:flakes',
  options: z.strictObject({
    days: z.int().min(1).max(30).meta({ description: 'Days to spread it over' }),
    share: z.number().meta({ description: 'Share of the rise' }).optional(),
    form: z.enum(['flakes', 'powder']).default('powder').meta({ description: 'How it comes' }),
    gentle: z.boolean().meta({ description: 'Half the usual pace' }).optional(),
    at: textOption('When').optional(),
  }),
  run: (input) => answer({ headline: JSON.stringify(input) }),
});

const tide = defineCommand({
  path: ['tide'],
  summary: 'Says the moment it runs in',
  example: '/tide',
  options: z.strictObject({}),
  run: (_, context) => answer({ headline: `It is ${context.nowMs} ms.` }),
});

const leak = defineCommand({
  path: ['leak'],
  summary: 'Fails with an error that is no Problem',
  example: '/leak',
  options: z.strictObject({}),
  run: () => {
    throw new Error('secret inner state');
  },
});

/** Commands small enough to see through, made as the real ones are. */
export const sampleCommands: readonly Command[] = [amount, pace, tide, leak];

/** Echoes words; "guess 7.2" asks back. */
export function sampleAsk(text: string): Answer {
  if (text.endsWith('guess 7.2')) {
    throw new Problem('7.2 in which unit?', {
      field: 'now',
      given: '7.2',
      choices: ['7.2 dKH', '7.2 meq/L'],
    });
  }
  return answer({ headline: `Heard: ${text}` });
}

/** A desk over the samples, with the errors reported to it; what is kept is kept in memory. */
export function sampleDesk(): Desk & { readonly reported: unknown[] } {
  const reported: unknown[] = [];
  const reportFailure = (error: unknown): string => `F${reported.push(error)}`;
  return {
    commands: sampleCommands,
    ask: sampleAsk,
    reader: lazyReader,
    nowMs: () => 1234,
    talk: () => ({ before: undefined, remember: () => undefined }),
    due: () => [],
    zone: 'UTC',
    keep: sampleKeep(),
    dataDir: join(tmpdir(), 'sumpside-sample-not-made'),
    toPng: async (svg) => new TextEncoder().encode(`png of ${svg}`),
    reportFailure,
    reported,
  };
}

export function sampleKeep(): Keep {
  return openStore({ file: ':memory:', nowMs: () => 1234 }).keepFor(LOCAL_PERSON);
}
