import { describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import { urgentCard, urgentCards, urgentIds } from '../../../core/care/urgent/cards.ts';
import { hurriedAlarms, hurriedCalm } from '../../cases/alarms-2.ts';

const told = (question: string) => ask(question, { nowMs: 0 });
const firsts: readonly string[] = Object.values(urgentCards).map(({ first }) => first);

/** The answer in one text, or why nothing was answered: a question that is asked back raises no alarm. */
function textOf(question: string): string {
  try {
    const { headline, read } = told(question);
    return [headline, ...read].join('\n');
  } catch (error) {
    return error instanceof Error ? `thrown: ${error.message}` : 'thrown';
  }
}

describe.each(urgentIds)('%s, in a hurry', (id) => {
  const sentences = hurriedAlarms[id] ?? [];

  it.each(sentences)('comes first for: %s', (question) =>
    expect(told(question).headline).toContain(urgentCard(id).first),
  );

  it('is asked for in words at all', () => expect(sentences.length).toBeGreaterThan(0));
});

describe('no alarm and no card', () => {
  it.each(hurriedCalm)('%s', (question) => {
    const text = textOf(question);
    expect(firsts.filter((first) => text.includes(first))).toEqual([]);
    expect(text).not.toMatch(/\/(?:triage|urgent) /);
  });
});
