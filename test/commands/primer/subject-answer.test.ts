import { expect, it } from 'vitest';
import { subjectCards } from '../../../core/care/subjects/cards.ts';
import { primerCommand } from '../../../commands/primer.ts';
import { subjectAnswer } from '../../../commands/primer/subject-answer.ts';

const all = [...subjectCards.values()].flat();

it('shows three facts, and the others behind a button', () => {
  const long = all.filter(({ points }) => points.length > 3);
  expect(long.length).toBeGreaterThan(20);
  for (const card of long) {
    const given = subjectAnswer(card);
    expect(given.facts).toHaveLength(3);
    expect(given.next[0]?.label).toBe('More on this');
    const whole = primerCommand.run({ about: card.title, all: 'yes' }, { nowMs: 0 });
    expect(whole.facts.map(({ label }) => label)).toEqual(card.points.map(([label]) => label));
    expect(whole.cautions).toEqual(given.cautions);
  }
});

it('has no button for more where nothing is left out', () => {
  const short = all.find(({ points }) => points.length <= 3);
  expect(short === undefined ? [] : subjectAnswer(short).next).toEqual([]);
});
