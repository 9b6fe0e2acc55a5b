import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { profilesFile, readTongueSentences } from '../../../../bot/reader/tongue-files.ts';
import { fitTongues } from '../../../../core/language/tongue/fit.ts';
import { runsOf, withoutMarks, wordsOf } from '../../../../core/language/tongue/letters.ts';
import { pack, unpack } from '../../../../core/language/tongue/packed.ts';
import { profiles } from '../../../../core/language/tongue/profiles.ts';
import { tongues } from '../../../../core/language/tongue/tongues.ts';

const sentences = readTongueSentences();

describe('the letter models', () => {
  it('are those of the sentences', () => expect(fitTongues(sentences)).toEqual(profiles));

  it('are smaller than 300 kB', () => expect(readFileSync(profilesFile).length).toBeLessThan(300_000));

  it('come out of their strings as they went in', () => expect(pack(unpack(profiles))).toEqual(profiles));

  it.each(tongues)('%s has at least 150 sentences, each once', (tongue) => {
    const own = sentences[tongue];
    expect(own.length).toBeGreaterThanOrEqual(150);
    expect(new Set(own.map((line) => line.toLowerCase())).size).toBe(own.length);
  });

  // Worked by hand: one sentence a language, "ab" in the first and "ac" in the others. Behind "a" there is one kind of
  // letter, seen once: P(b | a) = (1 + 1 x P(b)) / 2, P(b) = (1 + 3/60) / 6 of the three kinds a, b and the edge.
  it('hold Witten and Bell’s chance of a letter behind another', () => {
    const [first, ...others] = tongues.map((tongue) => [tongue, ['ac']] as const);
    const packed = fitTongues(Object.fromEntries([[first?.[0], ['ab']], ...others]) as typeof sentences);
    const steps = unpack(packed).get('ab')?.[0] ?? 0;
    expect(steps * 0.25).toBeCloseTo(-Math.log((1 + (1 + 3 / 60) / 6) / 2), 0);
  });
});

describe('letters', () => {
  it('are runs of at most four within a word and its edges', () =>
    expect(runsOf('agua')).toEqual(['_a', '_ag', '_agu', 'agua', 'gua_']));

  it('leave out words with digits', () =>
    expect(wordsOf("L'eau à 10kg, no3 = 5 große")).toEqual(['l’eau', 'à', 'große']));

  it('are also known without their marks', () =>
    expect(['größe', 'łódka', 'søpindsvin', 'über'].map(withoutMarks)).toEqual([
      'grosse',
      'lodka',
      'sopindsvin',
      'uber',
    ]));
});
