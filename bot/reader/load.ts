import { readFileSync } from 'node:fs';
import { openReader, type Reader } from '../../core/language/reading.ts';
import { modelFile } from './files.ts';

let opened: Reader | undefined;

/** The reader, made from its weights at the first use. */
export function loadReader(): Reader {
  opened ??= openReader(readFileSync(modelFile));
  return opened;
}

/** Stands for the reader until the first message in plain words. */
export const lazyReader: Reader = {
  get thresholds() {
    return loadReader().thresholds;
  },
  get story() {
    return loadReader().story;
  },
  get sentences() {
    return loadReader().sentences;
  },
  read: (text) => loadReader().read(text),
};
