import { describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import { findCommand } from '../../../commands/index.ts';
import { problemOf, textOf } from '../text.ts';

const about = (coral: string) => findCommand(['coral', 'about'])?.run({ coral }, { nowMs: 0 });

describe('a real genus without a page', () => {
  it('is said to be one, with its relatives as a question', () => {
    // Its species were in Goniastrea (from memory).
    const problem = problemOf(() => about('Coelastrea'));
    expect(problem.message).toBe('Coelastrea is a real genus, but I have no page on it.');
    expect(problem.choices).toContain('Goniastrea');
  });

  it('says where an older genus is today', () => {
    const problem = problemOf(() => about('Acrhelia horrescens'));
    expect(problem.message).toMatch(/^Acrhelia \(now Galaxea, from memory\) is a real genus/);
    expect(problem.choices).toEqual(['Galaxea']);
  });

  it('is asked after where it is misspelt', () => {
    expect(problemOf(() => about('oculinna')).message).toMatch(/^That may be Oculina/);
  });

  it.each([
    'how much light for a coelastrea',
    'can a boninastrea sit next to my torch?',
    'is agaricia easy to keep',
    'tell me about undaria',
  ])('in plain words: %s', (question) => {
    const given = ask(question, { nowMs: 0 });
    expect(given.headline).toMatch(/is a real genus, but I have no page on it/);
    expect(given.next.length).toBeGreaterThan(0);
    expect(textOf(given)).not.toMatch(/PAR/);
  });
});
