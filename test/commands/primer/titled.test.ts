import { describe, expect, it } from 'vitest';
import { runWithDefaults } from '../../../commands/defaults.ts';
import { primerCommand } from '../../../commands/primer.ts';
import { subjectTitled } from '../../../commands/primer/titled.ts';
import { subjectCards } from '../../../core/care/subjects/cards.ts';
import { Problem } from '../../../core/problem.ts';

const all = [...subjectCards.values()].flat();

describe('/primer about:', () => {
  it.each(all.map(({ title }) => title))('finds %s by its title', (title) => {
    const given = runWithDefaults(primerCommand, { about: title.toUpperCase() }, { nowMs: 0 });
    expect(given.headline).toBe(all.find((card) => card.title === title)?.headline);
  });

  it('asks back with the nearest titles', () => {
    const [first] = all;
    const words = (first?.title ?? '').split(/\W+/)[0] ?? '';
    const asked = (): unknown => subjectTitled(`${words} xyzzy`);
    expect(asked).toThrow(Problem);
    expect(asked).toThrow(/no card of that name/);
  });
});
