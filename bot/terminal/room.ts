import { createInterface, type Interface } from 'node:readline/promises';
import { inLocale } from '../../core/wording/in-locale.ts';
import { say } from '../../core/wording/say.ts';
import { erasingKeep } from '../erasing-keep.ts';
import { openTalks } from '../talks.ts';
import { complete, type Completions } from './complete.ts';
import { openDue } from './due.ts';
import { renderEcho } from './render.ts';
import type { Desk, Standing } from './desk.ts';
import { replyTo } from './reply.ts';
import type { Style } from './wrap.ts';
import { openWriter } from './writer.ts';

export interface RoomIo extends Omit<Desk, 'talk' | 'due'> {
  /** BCP 47 tag of whoever sits here; undefined where it is not known. */
  readonly locale?: string | undefined;
  readonly input: NodeJS.ReadableStream;
  readonly output: NodeJS.WritableStream;
}

/** The one person of the room. */
const HERE = 'here';
const PROMPT = '> ';
const NARROWEST = 40;
const USUAL_WIDTH = 80;

/** Answers line by line until the input ends or the person leaves. Piped lines are echoed before their replies. */
export function openRoom(io: RoomIo): Promise<void> {
  return inLocale(io.locale, () => answerLines(io));
}

async function answerLines(io: RoomIo): Promise<void> {
  const interactive = isTerminal(io.input) && isTerminal(io.output);
  const lines = interactive ? terminalLines(io) : createInterface({ input: io.input, crlfDelay: Infinity });
  const typedLines = lines[Symbol.asyncIterator]();
  const writer = openWriter(io.output, io.reportFailure);
  writer.gone.addEventListener('abort', () => lines.close());
  let open = true;
  lines.once('close', () => (open = false));
  if (interactive) await writer.write(`${say('terminal.greeting')}\n\n`);
  if (interactive && open) lines.prompt(true);
  let standing: Standing = { offers: [] };
  const due = openDue(io);
  const talks = openTalks(io.nowMs);
  const keep = erasingKeep(io.keep, () => talks.forgetTalks(HERE));
  const desk = { ...io, keep, talk: () => talks.talkOf(HERE, ['room']), due: due.now };
  try {
    for await (const typed of typedLines) {
      if (writer.gone.aborted) break;
      const style = styleOf(io.output);
      const reply = await replyTo(typed, standing, desk, style);
      standing = reply;
      const nowDue = typed.trim() === '' ? '' : due.show(style);
      if (!interactive && typed.trim() !== '') await writer.write(renderEcho(typed, style));
      if (nowDue !== '') await writer.write(`${nowDue}\n`);
      if (reply.text !== '') await writer.write(`${reply.text}\n`);
      if (reply.leave) break;
      if (interactive && open) lines.prompt(true);
    }
  } catch (error) {
    io.reportFailure(error);
  }
  if (interactive && !open) await writer.write('\n');
  lines.close();
}

function terminalLines(io: RoomIo): Interface {
  const completer = (line: string): Completions => {
    try {
      return complete(line, io.commands, io.keep);
    } catch (error) {
      io.reportFailure(error);
      return [[], line];
    }
  };
  const { input, output } = io;
  return createInterface({ input, output, terminal: true, prompt: PROMPT, completer });
}

function isTerminal(stream: object): boolean {
  return 'isTTY' in stream && stream.isTTY === true;
}

function styleOf(output: object): Style {
  const columns = 'columns' in output && typeof output.columns === 'number' ? output.columns : USUAL_WIDTH;
  const noColor = process.env['NO_COLOR'] ?? '';
  return { width: Math.max(NARROWEST, columns), bold: isTerminal(output) && noColor === '' };
}
