import { describe, expect, it } from 'vitest';
import { troubleIn } from '../../../core/words/trouble.ts';

describe('trouble reported in words', () => {
  it.each([
    ['alk 8.3 ca 420 but my torch stays closed', 'closed'],
    ['all numbers good and corals still look bad', 'look bad'],
    ['fish gasping at the top', 'gasping'],
    ['zoas not opening since sunday', 'not opening'],
    ['no algae but acros are losing flesh', 'losing flesh'],
    ['hammer receding', 'receding'],
    ['water is cloudy', 'cloudy'],
  ])('%s', (text, words) => expect(troubleIn(text)).toBe(words));

  it.each(['alk 8.3 ca 420 mg 1350', 'no algae, nothing died', 'everything looks great today'])(
    'none in: %s',
    (text) => expect(troubleIn(text)).toBeUndefined(),
  );
});
