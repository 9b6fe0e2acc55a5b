import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer, type Fact } from '../../commands/answer.ts';
import { shortForm } from '../../commands/short.ts';
import { shortLimits } from '../../commands/short/limits.ts';

const facts = (count: number): readonly Fact[] =>
  Array.from({ length: count }, (_, at) => ({ label: `fact ${at + 1}`, value: `${at + 1} g` }));
const lines = (count: number, what: string): readonly string[] =>
  Array.from({ length: count }, (_, at) => `${what} ${at + 1}`);

describe('the short form', () => {
  it('takes what decides from the front and tells what is left', () => {
    const short = shortForm(
      answer({ headline: 'So.', facts: facts(5), steps: lines(4, 'step'), working: ['1 + 1 = 2'] }),
    );
    expect(short.facts.map(({ label }) => label)).toEqual(['fact 1', 'fact 2', 'fact 3']);
    expect(short.steps).toEqual(['step 1', 'step 2', 'step 3']);
    expect(short.left).toBe('1 more step, 2 more lines');
  });

  it('has five steps where it presses', () => {
    const short = shortForm(answer({ headline: 'Air first.', tone: 'urgent', steps: lines(7, 'step') }));
    expect(short.steps).toHaveLength(5);
  });

  it('never leaves out a danger: the first has a line, the others share one', () => {
    expect(shortForm(answer({ headline: 'So.', dangers: lines(4, 'danger') })).dangers).toEqual([
      'danger 1',
      'danger 2 danger 3 danger 4',
    ]);
    fc.assert(
      fc.property(fc.array(fc.string({ minLength: 1 }), { maxLength: 9 }), (dangers) => {
        const said = shortForm(answer({ headline: 'So.', dangers })).dangers.join(' ');
        for (const danger of dangers) expect(said).toContain(danger);
      }),
    );
  });

  it('reads the first values that fit a line, and everything that was not used', () => {
    const { read } = shortForm(
      answer({ headline: 'So.', read: ['x'.repeat(80), 'y'.repeat(60), 'short'], unused: ['30 ml'] }),
    );
    expect(read).toBe(`${'x'.repeat(80)}; not used: 30 ml`);
  });

  it('turns the pages of a list and of a table', () => {
    const list = answer({ headline: 'So.', facts: facts(19), isList: true });
    expect(shortForm(list).pages).toBe(3);
    expect(shortForm(list, 3).facts.map(({ label }) => label)).toEqual(['fact 17', 'fact 18', 'fact 19']);
    const table = { head: ['day', 'g'], rows: Array.from({ length: 9 }, (_, at) => [`${at}`, '1']) };
    expect(shortForm(answer({ headline: 'So.', table }), 2).table?.rows).toEqual([['8', '1']]);
  });

  it('narrows a table to what a phone shows side by side', () => {
    const table = {
      head: ['reading', 'target', 'whose it is'],
      rows: [['alkalinity', '8 to 9 dKH', 'yours']],
    };
    const short = shortForm(answer({ headline: 'So.', table }));
    expect(short.table).toEqual({ head: ['reading', 'target'], rows: [['alkalinity', '8 to 9 dKH']] });
  });

  it('says what it rests on, the surest first', () => {
    expect(shortForm(answer({ headline: 'So.', sources: ['memory', 'practice', 'iupac21'] })).restsOn).toBe(
      'standards, common practice, memory',
    );
    expect(shortForm(answer({ headline: 'So.' })).restsOn).toBe('');
  });

  it('offers four next steps', () => {
    const next = Array.from({ length: 6 }, (_, at) => ({
      label: `${at}`,
      command: 'convert' as const,
      input: { amount: `${at} g` },
    }));
    expect(shortForm(answer({ headline: 'So.', next })).next).toHaveLength(shortLimits.next);
  });
});
