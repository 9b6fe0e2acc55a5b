import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readBatch, type Batch } from '../../core/language/labelled.ts';
import { cardTexts } from './card-texts.ts';

/** The project's own folder, whether this runs as source or as build. */
export const home = homeOf(dirname(fileURLToPath(import.meta.url)));

export const modelFile = join(home, 'core/language/model/weights.bin');
export const reportFile = join(home, 'core/language/model/report.md');
/** Measuring batches that are never trained on, and the figures they must not fall below. */
export const measuredDir = join(home, 'core/language/measured');
export const lockedFile = join(home, 'core/language/measured/locked.json');
export const sentencesDir = join(home, 'core/language/sentences');

function homeOf(from: string): string {
  const isHome = existsSync(join(from, 'package.json')) && existsSync(join(from, 'core'));
  return isHome ? from : homeOf(dirname(from));
}

/** A batch with the name of its file and its bytes' place in the hash. */
export interface NamedBatch extends Batch {
  readonly name: string;
}

/** Every batch of sentences, by name. */
export function readSentences(): readonly NamedBatch[] {
  return sentenceFiles().map((name) => ({
    name: name.replace(/\.jsonl$/, ''),
    ...readBatch(readFileSync(join(sentencesDir, name), 'utf8')),
  }));
}

/** SHA-256 over all training sentences and the words of the cards: what the weights carry, so that both can be seen to belong together. */
export function sentencesHash(): string {
  const hash = createHash('sha256');
  for (const name of sentenceFiles())
    hash
      .update(name)
      .update('\0')
      .update(readFileSync(join(sentencesDir, name)));
  return hash.update(JSON.stringify(cardTexts)).digest('hex');
}

function sentenceFiles(): readonly string[] {
  return readdirSync(sentencesDir)
    .filter((name) => name.endsWith('.jsonl'))
    .sort();
}
