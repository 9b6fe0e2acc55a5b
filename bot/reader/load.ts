import { readFileSync } from 'node:fs';
import { openReader, type Reader } from '../../core/language/reading.ts';
import { modelFile } from './files.ts';

let reader: Reader | undefined;

/** The reader, from the first message in plain words on. */
export function loadReader(): Reader {
  reader ??= openReader(readFileSync(modelFile));
  return reader;
}
