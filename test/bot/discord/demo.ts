import { z } from 'zod';
import { answer } from '../../../commands/answer.ts';
import type { Answer } from '../../../commands/answer.ts';
import { defineCommand } from '../../../commands/command.ts';
import type { Command } from '../../../commands/command.ts';
import { textOption } from '../../../commands/options.ts';
import { Problem } from '../../../core/problem.ts';
import { pretended } from '../../action.ts';

/** Small commands that show every way of answering; they say nothing about tanks. */
export const demoCommands: readonly Command[] = [
  defineCommand({
    path: ['echo'],
    summary: 'Says what was said',
    example: '/echo reading:8.3 dKH',
    options: z.strictObject({ reading: textOption('What to say', { max: 4000 }) }),
    run: ({ reading }, { nowMs }) =>
      answer({
        headline: reading,
        read: [`at ${nowMs}`],
        next: [pretended({ label: 'Once more', command: 'echo', input: { reading } })],
      }),
  }),
  defineCommand({
    path: ['tank', 'size'],
    summary: 'Asks back',
    example: '/tank size volume:75',
    options: z.strictObject({
      volume: textOption('Volume'),
      share: z.number().min(1).max(90).describe('Share in %').optional(),
      fresh: z.boolean().describe('Fresh water').default(false),
    }),
    run: ({ volume, share, fresh }) => {
      if (/[a-z]/.test(volume)) return answer({ headline: `${volume}, ${share ?? 'no'} share, ${fresh}` });
      throw new Problem('Which unit is 75?', {
        field: 'volume',
        given: volume,
        limit: '1 L to 100 000 L',
        hint: 'Write the unit after the number.',
        choices: ['75 L', '75 US gal'],
      });
    },
  }),
  defineCommand({
    path: ['tank', 'of'],
    summary: 'Offers parameters and a choice',
    example: '/tank of of:alkalinity',
    private: true,
    options: z.strictObject({
      of: textOption('Parameter', { suggest: 'parameter' }),
      pace: z.enum(['slow', 'usual']).describe('How fast').default('usual'),
    }),
    run: ({ of, pace }) => answer({ headline: `${of} ${pace}` }),
  }),
  defineCommand({
    path: ['broken'],
    summary: 'Fails',
    example: '/broken with:word',
    options: z.strictObject({ with: textOption('Anything') }),
    run: (input) => {
      throw new TypeError(`nothing can be done with ${input.with}`);
    },
  }),
];

export function demoAsk(text: string): Answer {
  if (text === 'unclear') throw new Problem('Say more.', { field: 'question', choices: ['one', 'two'] });
  if (text === 'broken') throw new Error(text);
  return answer({ headline: `You asked: ${text}` });
}
