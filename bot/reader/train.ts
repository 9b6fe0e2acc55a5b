import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fitModel } from '../../core/language/fit.ts';
import { modelBytes } from '../../core/language/model-file.ts';
import { cardTexts } from './card-texts.ts';
import { modelFile, readSentences, sentencesHash } from './files.ts';

/** Makes the weights anew from every batch of sentences and the words of the cards. The same words give the same bytes. */
const batches = readSentences();
const bytes = modelBytes(fitModel(batches, cardTexts, sentencesHash()));
mkdirSync(dirname(modelFile), { recursive: true });
writeFileSync(modelFile, bytes);
const count = batches.reduce((sum, { lines }) => sum + lines.length, 0);
process.stdout.write(
  `${count} messages in ${batches.length} batches -> ${(bytes.length / 1e6).toFixed(1)} MB\n`,
);
