import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { renderLong } from '../../../bot/terminal/long-page.ts';
import { renderEcho, renderProblem, renderShort } from '../../../bot/terminal/render.ts';
import { columns } from '../../../bot/columns.ts';
import { answer } from '../../../commands/answer.ts';
import { Problem } from '../../../core/problem.ts';
import { sources } from '../../../core/sources.ts';
import { pretended } from '../../action.ts';

const style = { width: 60, bold: false };

/** Whether a line has a second word after its list mark. */
function isBreakable(line: string): boolean {
  const text = line.trim().replace(/^(?:-|\d+\.|\[\d+\]) /, '');
  return /\S[^\S\u00A0\u202F]+\S/.test(text);
}

const full = answer({
  headline: 'Dissolve 6.4 g of soda ash a day for two days.',
  read: ['75 gal as US gallons (3.785 L)', 'alkalinity now 7.2 dKH'],
  facts: [
    { label: 'rise', value: '1.2 dKH', verdict: 'over two days' },
    { label: 'each day', value: '6.4 g' },
  ],
  steps: ['Dissolve it in fresh water.', 'Add it slowly where the flow is strong.'],
  working: ['1.2 dKH / 2.804 x 283.9 L = 121.5 meq'],
  echo: '/dose amount of:alkalinity',
  unused: ['30 ml'],
  dangers: ['Keep it away from eyes.'],
  cautions: ['Somebody else’s amount is for their tank.'],
  sources: ['dkh'],
  next: [
    pretended({ label: 'Plan the days', command: 'dose pace', input: { days: '2' } }),
    { label: 'Convert 75 gal', command: 'convert', input: { amount: '75 gal' } },
  ],
});

describe('the long form', () => {
  it('prints the headline and the results first and then every other part under its words', () => {
    expect(renderLong({ ...full, sources: [] }, style).split('\n')).toEqual([
      'Dissolve 6.4 g of soda ash a day for two days.',
      '',
      '  rise      1.2 dKH  over two days',
      '  each day  6.4 g',
      '',
      'Do this',
      '  1. Dissolve it in fresh water.',
      '  2. Add it slowly where the flow is strong.',
      '',
      'Take care',
      '  - Keep it away from eyes.',
      '',
      'Mind as well',
      '  - Somebody else’s amount is for their tank.',
      '',
      'What I read',
      '  - 75 gal as US gallons (3.785 L)',
      '  - alkalinity now 7.2 dKH',
      '',
      'Not used',
      '  - 30 ml',
      '',
      'The same as a command',
      '  - /dose amount of:alkalinity',
      '',
      'How it adds up',
      '  - 1.2 dKH / 2.804 x 283.9 L = 121.5 meq',
      '',
      'Next: type a number',
      '  [1] Plan the days',
      '  [2] Convert 75 gal',
      '',
    ]);
  });

  it('prints sources by title', () => {
    const text = renderLong(full, { width: 300, bold: false });
    expect(text).toContain(`Sources\n  - ${sources.dkh.title}\n`);
  });
});

describe('the short form', () => {
  it('prints what decides, what can hurt, and one line each of what was read and what it rests on', () => {
    expect(renderShort(full, { ...style, width: 90 }).split('\n')).toEqual([
      'Dissolve 6.4 g of soda ash a day for two days.',
      '',
      '  rise      1.2 dKH  over two days',
      '  each day  6.4 g',
      '',
      'Do this',
      '  1. Dissolve it in fresh water.',
      '  2. Add it slowly where the flow is strong.',
      '',
      'Take care',
      '  - Keep it away from eyes.',
      '',
      'Read: 75 gal as US gallons (3.785 L); alkalinity now 7.2 dKH; not used: 30 ml.',
      'Rests on: own rules.',
      'Type why for the working.',
      '',
      'Next: type a number',
      '  [1] Plan the days',
      '  [2] Convert 75 gal',
      '',
    ]);
  });

  it('says that it presses', () => {
    expect(renderShort(answer({ headline: 'Air first.', tone: 'urgent' }), style)).toBe(
      'Air first.\nUrgent\n',
    );
  });

  it('leaves out what an answer does not have', () => {
    expect(renderShort(answer({ headline: 'Nothing to do.' }), style)).toBe('Nothing to do.\n');
  });

  it('is bold only where asked, and only in the headline and titles', () => {
    const text = renderShort(full, { ...style, bold: true });
    expect(text).toContain('\u001B[1mDo this\u001B[22m\n');
    expect(text.replaceAll('\u001B[1m', '').replaceAll('\u001B[22m', '')).toBe(renderShort(full, style));
    expect(renderShort(full, style)).not.toContain('\u001B');
  });

  it('stays within the width and shows hostile text as signs', () => {
    const text = fc.string({ unit: 'binary', maxLength: 120 });
    const spaced = fc.array(fc.string({ maxLength: 12 }), { maxLength: 30 }).map((words) => words.join(' '));
    const any = fc.oneof(text, spaced, fc.constant('\u001B[2J\u001B]0;owned\u0007\r\n\u009B1A'));
    fc.assert(
      fc.property(any, any, any, fc.integer({ min: 40, max: 100 }), (a, b, c, width) => {
        const both = answer({
          headline: a,
          read: [b],
          facts: [
            { label: a, value: b, verdict: c },
            { label: c, value: a },
          ],
          steps: [b, c],
          working: [c],
          dangers: [a, c],
          cautions: [a],
          unused: [c],
          next: [pretended({ label: b, command: 'x', input: {} })],
        });
        const page = renderShort(both, { width, bold: false }) + renderLong(both, { width, bold: false });
        expect(page.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/u);
        expect(page.split('\n').filter((line) => columns(line) > width && isBreakable(line))).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });
});

describe('renderProblem', () => {
  const problem = new Problem('7.2 in which unit?', {
    field: 'now',
    given: '7.2',
    limit: '0 to 20 dKH',
    hint: 'Write dKH or meq/L after the number.',
    choices: ['7.2 dKH', '7.2 meq/L'],
  });

  it('says what is wrong, where, what was given, the limit, a hint and the choices', () => {
    expect(renderProblem(problem, style, true).split('\n')).toEqual([
      '7.2 in which unit?',
      '  Where     now',
      '  Given     7.2',
      '  Accepted  0 to 20 dKH',
      '  Write dKH or meq/L after the number.',
      '',
      'Which one? Type a number',
      '  [1] 7.2 dKH',
      '  [2] 7.2 meq/L',
      '',
    ]);
  });

  it('lists choices that cannot be picked without numbers', () => {
    expect(renderProblem(problem, style, false)).toContain('  Choices   7.2 dKH, 7.2 meq/L\n');
  });

  it('says only what it knows, and cuts a long text short', () => {
    expect(renderProblem(new Problem('No.', { field: 'of' }), style, false)).toBe('No.\n  Where  of\n');
    const long = new Problem('No.', { field: 'of', given: 'x'.repeat(5000) });
    expect(renderProblem(long, style, false).length).toBeLessThan(260);
  });
});

describe('renderEcho', () => {
  it('shows the line typed, without what steers a terminal', () => {
    expect(renderEcho('/tide \u001B[2J', style)).toBe('> /tide ␛[2J\n');
    expect(renderEcho('word '.repeat(300_000), style).length).toBeLessThan(260);
  });
});
