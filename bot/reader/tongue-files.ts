import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { tongues, type TongueSentences } from '../../core/language/tongue/tongues.ts';
import { home } from './files.ts';

export const profilesFile = join(home, 'core/language/tongue/profiles.ts');

/** The sentences each language is learnt from, one a line. */
export function readTongueSentences(): TongueSentences {
  const entries = tongues.map((tongue) => [tongue, sentencesOf(tongue)]);
  return Object.fromEntries(entries) as TongueSentences;
}

function sentencesOf(tongue: string): readonly string[] {
  return readFileSync(join(home, 'core/language/tongue/sentences', `${tongue}.txt`), 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '');
}
