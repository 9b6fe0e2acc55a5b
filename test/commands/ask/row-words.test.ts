import { describe, expect, it } from 'vitest';
import { rowOf } from '../../../commands/ask/kinds.ts';
import { kinds } from '../../../core/language/kinds.ts';
import { say } from '../../../core/wording/say.ts';

const rows = kinds.flatMap((kind) => rowOf(kind) ?? []);

/** What `Row.label` promises. */
const MOST_LETTERS = 40;

describe('the words of the rows', () => {
  it.each(rows)('$kind: its button is short', ({ label }) => {
    expect(say(label).length).toBeLessThanOrEqual(MOST_LETTERS);
  });

  it('are on one button each', () => {
    const words = rows.map(({ label }) => say(label));
    expect(new Set(words).size).toBe(rows.length);
  });

  it.each(rows.flatMap(({ kind, needs = [] }) => needs.map(({ ask }) => ({ kind, ask }))))(
    '$kind: $ask asks',
    ({ ask }) => {
      expect(say(ask)).toContain('?');
    },
  );
});
