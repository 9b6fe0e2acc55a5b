import { z } from 'zod';
import { answer } from '../../../commands/answer.ts';
import type { Answer } from '../../../commands/answer.ts';
import { defineCommand } from '../../../commands/command.ts';
import type { Command } from '../../../commands/command.ts';
import { fileOption, textOption } from '../../../commands/options.ts';
import { Problem } from '../../../core/problem.ts';
import { pretended } from '../../action.ts';

export const alt = 'Alkalinity rises from 7.2 to 8.4 dKH over two days.';

const square =
  '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="30"><rect width="9" height="9"/></svg>';

/** An answer with a picture. */
export const drawing: Answer = drawn(square);

function drawn(svg: string): Answer {
  return answer({ headline: 'Drawn.', steps: ['Test again.'], pictures: [{ name: 'Alk trend!', svg, alt }] });
}

/** Small commands that take and give files, pictures and tables. */
export const fileCommands: readonly Command[] = [
  defineCommand({
    path: ['chart'],
    summary: 'Draws',
    example: '/chart',
    options: z.strictObject({ svg: textOption('What to draw').optional() }),
    run: ({ svg = square }) => drawn(svg),
  }),
  defineCommand({
    path: ['sheet'],
    summary: 'Lists',
    example: '/sheet',
    private: true,
    options: z.strictObject({ rows: z.int().min(1).max(5000).describe('Rows'), cell: textOption('Cell') }),
    run: ({ rows, cell }) =>
      answer({
        headline: `${rows} rows.`,
        table: {
          head: ['day', 'alkalinity', 'note'],
          rows: Array.from({ length: rows }, (_, index) => [`${index + 1}`, '8.3 dKH', cell]),
        },
      }),
  }),
  defineCommand({
    path: ['papers', 'out'],
    summary: 'Gives a file',
    example: '/papers out',
    options: z.strictObject({}),
    run: () => answer({ headline: 'Here.', file: { name: '../My Papers.csv', text: 'day;alk\n1;8,3\n' } }),
  }),
  defineCommand({
    path: ['papers', 'in'],
    summary: 'Takes a file',
    example: '/papers in file:papers.csv',
    options: z.strictObject({
      file: fileOption('A table as CSV', ['.csv']),
      with: textOption('How to read it').optional(),
    }),
    run: ({ file, with: way }) => {
      if (way === 'guess')
        throw new Problem('Comma or point?', { field: 'with', given: way, choices: ['comma', 'point'] });
      const start = file.text.charCodeAt(0).toString(16);
      return answer({
        headline: `${file.name} holds ${file.text.length} characters from ${start}, ${way ?? 'as is'}`,
        next: [pretended({ label: 'Draw it', command: 'chart', input: {} })],
      });
    },
  }),
];
