import type { Answer } from '../../../commands/answer.ts';
import { sources } from '../../../core/sources.ts';
import type { Call } from '../asked/call.ts';
import type { Drawn } from '../message/drawn.ts';

/** Goes up with every change of `Answer` or `Call` that makes an old one wrong: those are ignored. */
const FORMAT = 1;

/** Pictures, files, notices and what this platform added were shown with it, once. */
export function answerBody(given: Drawn): string {
  const {
    pictures: _,
    pngs: _pngs,
    file: _file,
    notices: _notices,
    notes: _notes,
    postId: _post,
    ...answer
  } = given;
  return JSON.stringify({ format: FORMAT, answer });
}

export function callBody({ command, input, ask }: Call): string {
  return JSON.stringify({ format: FORMAT, call: { command, input, ask } });
}

/** Undefined for one of another format. A source that is no longer listed is left out. */
export function readAnswer(body: string): Answer | undefined {
  const answer = read(body)?.answer;
  return answer && { ...answer, sources: answer.sources.filter((code) => code in sources) };
}

export function readCall(body: string): Call | undefined {
  return read(body)?.call;
}

interface Body {
  readonly format: number;
  readonly answer?: Answer;
  readonly call?: Call;
}

function read(body: string): Body | undefined {
  const found = JSON.parse(body) as Body;
  return found.format === FORMAT ? found : undefined;
}
