import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { menus } from '../../../../bot/discord/menu/menus.ts';
import { definitions, menuDefinitions } from '../../../../bot/discord/register/definition.ts';
import { answer } from '../../../../commands/answer.ts';
import { defineCommand } from '../../../../commands/command.ts';
import type { Command } from '../../../../commands/command.ts';
import { commands } from '../../../../commands/index.ts';
import { fileOption } from '../../../../commands/options.ts';
import { checkCommandList } from '../../../discord/standin/check-command.ts';
import { spot } from '../../../discord/standin/spot.ts';
import type { Issue } from '../../../discord/standin/spot.ts';
import { demoCommands } from '../demo.ts';

function issuesOf(list: readonly Command[]): readonly Issue[] {
  const issues: Issue[] = [];
  checkCommandList(spot(issues), definitions(list));
  return issues;
}

function command(path: Command['path'], extra: { summary?: string; options?: z.ZodObject } = {}): Command {
  const { summary = 'Something', options = z.strictObject({}) } = extra;
  return defineCommand({ path, summary, example: '/x', options, run: () => answer({ headline: 'x' }) });
}

describe('definitions', () => {
  it('of the real commands are inside every limit', () => {
    expect(issuesOf(commands)).toEqual([]);
    expect(definitions(commands).map((each) => each.name)).toContain('dose');
  });

  it('turn paths into subcommands and schemas into options', () => {
    const [echo, tank] = definitions(demoCommands);
    expect(echo).toEqual({
      type: 1,
      name: 'echo',
      description: 'Says what was said',
      options: [{ type: 3, name: 'reading', description: 'What to say', required: true, max_length: 4000 }],
      contexts: [0, 1, 2],
      integration_types: [0, 1],
    });
    expect(tank?.options).toMatchObject([
      {
        type: 1,
        name: 'size',
        options: [
          { type: 3, name: 'volume', required: true },
          { type: 10, name: 'share', required: false, min_value: 1, max_value: 90 },
          { type: 5, name: 'fresh', required: false },
        ],
      },
      {
        type: 1,
        name: 'of',
        options: [
          { type: 3, name: 'of', autocomplete: true },
          {
            type: 3,
            name: 'pace',
            choices: [
              { name: 'slow', value: 'slow' },
              { name: 'usual', value: 'usual' },
            ],
          },
        ],
      },
    ]);
  });

  it('of the menus on a message have a name alone, and go with the commands', () => {
    const found = menuDefinitions(menus);
    expect(found).toEqual([
      { type: 3, name: 'Work out the numbers', contexts: [0, 1, 2], integration_types: [0, 1] },
      { type: 3, name: 'Check these readings', contexts: [0, 1, 2], integration_types: [0, 1] },
    ]);
    const issues: Issue[] = [];
    checkCommandList(spot(issues), [...definitions(commands), ...found]);
    expect(issues).toEqual([]);
    checkCommandList(spot(issues), [{ ...found[0], name: 'x'.repeat(33) }]);
    checkCommandList(spot(issues), [{ ...found[0], description: 'None has one' }]);
    expect(issues.map(({ rule }) => rule)).toEqual(['command.name', 'command.shape']);
  });

  it('turn a file into an attachment', () => {
    const options = z.strictObject({ file: fileOption('A table as CSV', ['.csv']) });
    const [only] = definitions([command(['papers'], { options })]);
    expect(only?.options).toEqual([
      { type: 11, name: 'file', description: 'A table as CSV', required: true, file_types: ['.csv'] },
    ]);
    expect(issuesOf([command(['papers'], { options })])).toEqual([]);
  });

  it('offers more than 25 choices while typing', () => {
    const many = Array.from({ length: 26 }, (_, index) => `choice ${index}`);
    const options = z.strictObject({ of: z.enum(many).describe('Which') });
    const [only] = definitions([command(['many'], { options })]);
    expect(only?.options).toEqual([
      { type: 3, name: 'of', description: 'Which', required: true, autocomplete: true },
    ]);
  });

  it('refuses a long description, a name used twice and a name with and without subcommands', () => {
    expect(() => definitions([command(['long'], { summary: 'x'.repeat(101) })])).toThrow('101 characters');
    expect(() => definitions([command(['same']), command(['same'])])).toThrow('/same');
    expect(() => definitions([command(['same']), command(['same', 'below'])])).toThrow('/same');
    expect(() => definitions([command(['same', 'below']), command(['same', 'below'])])).toThrow('/same');
  });
});
