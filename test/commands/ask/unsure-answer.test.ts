import { describe, expect, it } from 'vitest';
import { partNames } from '../../../core/language/parts.ts';
import { framesOf } from '../../../core/language/frame.ts';
import { withChoices, type Choice } from '../../../core/language/unsure.ts';
import { unsureAnswer } from '../../../commands/ask/unsure-answer.ts';
import { saidOf } from '../../core/language/said-of.ts';

const TEXT = 'alk 7.2 want 8.4 in 75 gal with soda ash';

function answerFor(choices: readonly [Choice, Choice], chosen?: string) {
  const { scanned, said } = saidOf(
    TEXT,
    ['now', 'alkalinity'],
    ['wanted', 'alkalinity'],
    ['system', 'nothing'],
  );
  const kinds = [{ name: 'dose-amount', probability: 1 }] as const;
  const reading = { given: TEXT, scanned, said, kinds, cards: () => [] };
  const [frame] = framesOf(chosen === undefined ? reading : withChoices(reading, chosen));
  if (frame === undefined) throw new Error('no frame');
  return unsureAnswer(frame, { at: 2, text: '75 gal', choices });
}

const WATER: readonly [Choice, Choice] = [
  { part: 'system', of: 'nothing' },
  { part: 'changed', of: 'water' },
];

describe('the one question about a number', () => {
  it('names the number and what it may be, and leaves a way out', () => {
    const { headline, next } = answerFor(WATER);
    expect(headline).toContain('75 gal');
    expect(next.map(({ label }) => label)).toEqual([
      'the water in the whole tank',
      'the water changed',
      'something else',
    ]);
    expect(next[0]?.input).toEqual({ as: 'dose-amount', parts: '2:system:nothing' });
  });

  it('has the way out last, wherever it stands among what it may be', () => {
    const { next } = answerFor([{ part: 'none', of: 'nothing' }, WATER[0]]);
    expect(next.map(({ label }) => label)).toEqual(['the water in the whole tank', 'something else']);
  });

  it('keeps what an earlier button said', () =>
    expect(answerFor(WATER, '0:now:alkalinity').next[1]?.input).toEqual({
      as: 'dose-amount',
      parts: '0:now:alkalinity 2:changed:water',
    }));

  it.each(partNames.filter((part) => part !== 'none'))('has a label for %s that fits a button', (part) => {
    const { next } = answerFor([
      { part, of: 'alkalinity' },
      { part: 'none', of: 'nothing' },
    ]);
    expect(next[0]?.label.length).toBeLessThanOrEqual(40);
  });
});
