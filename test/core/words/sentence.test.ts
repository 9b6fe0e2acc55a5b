import { expect, it } from 'vitest';
import { firstSentence, sentencesOf } from '../../../core/words/sentence.ts';

it('parts sentences, and no number or name of a paper', () => {
  const text = 'They stand 9.8 cm apart. Lapid et al. 2004 saw 12 cm. Look at night!';
  expect(sentencesOf(text)).toEqual([
    'They stand 9.8 cm apart.',
    'Lapid et al. 2004 saw 12 cm.',
    'Look at night!',
  ]);
  expect(firstSentence(text)).toBe('They stand 9.8 cm apart.');
  expect(firstSentence('no full stop')).toBe('no full stop');
});
