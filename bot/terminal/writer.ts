import type { Desk } from './desk.ts';

/** Writes one text after another, each waiting until the reader has room for more. */
export interface Writer {
  readonly write: (text: string) => Promise<void>;
  /** Aborted once nobody reads any more. */
  readonly gone: AbortSignal;
}

/** A reader that leaves (EPIPE, as in `| head`) ends the writing quietly; other errors are reported. */
export function openWriter(output: NodeJS.WritableStream, reportFailure: Desk['reportFailure']): Writer {
  const left = new AbortController();
  output.on('close', () => left.abort());
  output.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') reportFailure(error);
    left.abort();
  });
  const write = async (text: string): Promise<void> => {
    if (left.signal.aborted || text === '' || output.write(text)) return;
    await drained(output, left.signal);
  };
  return { write, gone: left.signal };
}

function drained(output: NodeJS.WritableStream, gone: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    const done = (): void => {
      output.off('drain', done);
      gone.removeEventListener('abort', done);
      resolve();
    };
    output.on('drain', done);
    gone.addEventListener('abort', done);
  });
}
