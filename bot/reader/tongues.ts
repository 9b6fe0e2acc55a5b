import { writeFileSync } from 'node:fs';
import { fitTongues } from '../../core/language/tongue/fit.ts';
import type { Packed } from '../../core/language/tongue/packed.ts';
import { profilesFile, readTongueSentences } from './tongue-files.ts';

/** Makes the letter models of the languages anew from their sentences. The same sentences give the same file. */
writeFileSync(profilesFile, written(fitTongues(readTongueSentences())));

function written(packed: Packed): string {
  const lines = packed.map((runs) => `  '${runs}',\n`).join('');
  return [
    "import type { Packed } from './packed.ts';\n",
    '\n/** Letter models of the languages, written by bot/reader/tongues.ts from sentences/. */\n',
    `export const profiles: Packed = [\n${lines}];\n`,
  ].join('');
}
