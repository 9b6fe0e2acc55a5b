import { describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import { symptomCard, symptomIds } from '../../../core/care/symptoms/cards.ts';
import { seen } from '../../cases/symptoms.ts';
import { rendered } from '../coral/rendered.ts';

const told = (question: string) => ask(question, { nowMs: 0 });
const named = (id: string) => new RegExp(String.raw`/triage seen:"?${id}(?![a-z ]*[a-z])`);

describe.each(symptomIds)('%s', (id) => {
  const sentences = seen[id] ?? [];

  it.each(sentences)('is read in: %s', (question) => {
    const given = told(question);
    expect(given.read.join('\n')).toMatch(named(id));
    expect(rendered(given).issues).toEqual([]);
  });

  it('is said in words at all', () => expect(sentences.length).toBeGreaterThan(0));
});

describe('animals that nobody put in', () => {
  it.each(['found a bristleworm is it bad', 'tiny white bugs on the glass'])(
    'are called harmless first: %s',
    (question) => {
      const { headline, cautions, steps } = told(question);
      expect(headline).toMatch(/^Leave it for now: most small animals .* harmless or useful/);
      expect([...cautions, ...steps].join('\n')).toMatch(/bare fingers/);
    },
  );
});

describe('a film on the surface', () => {
  it('puts oxygen first', () =>
    expect(told('oily film on top of the water').headline).toMatch(/keeps oxygen out/));

  it('can turn into an emergency', () => expect(symptomCard('surface film').urgent).toBe('oxygen loss'));
});
