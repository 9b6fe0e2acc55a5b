import type { Reader } from '../../core/language/reading.ts';
import type { Answer } from '../../commands/answer.ts';
import type { Talk } from '../../commands/ask/talk.ts';
import type { Asking, Command } from '../../commands/command.ts';
import { runWithDefaults } from '../../commands/defaults.ts';
import type { Keep } from '../../commands/keep.ts';
import { Problem } from '../../core/problem.ts';
import { withNotices } from '../notices.ts';
import { withFiles } from './given-file.ts';
import { inWords } from './told.ts';
import { helpPage } from './help.ts';
import { commandNamed, nameOf } from '../../commands/named.ts';
import {
  actionOffer,
  confirmedOffer,
  chosenInCommand,
  chosenInText,
  chosenInWords,
  typedForm,
  type Offer,
} from './offer.ts';
import { writeFiles, type Outbox } from './output-files.ts';
import { answeredWith, asking, type Question } from './question.ts';
import { checkLength, readLine, type Line } from './read.ts';
import { page, renderAnswer, renderProblem } from './render.ts';
import { wrap, type Style } from './wrap.ts';

/** What the room needs to answer a line. */
export interface Desk extends Outbox {
  readonly commands: readonly Command[];
  readonly ask: (text: string, asking: Asking) => Answer;
  readonly reader: Reader;
  readonly nowMs: () => number;
  /** IANA zone of this machine. */
  readonly zone: string;
  /** What the person at this machine keeps. */
  readonly keep: Keep;
  /** What was asked here before. */
  readonly talk: () => Talk;
}

/** What the room goes on from: what a number typed next runs, and the form being filled in. */
export interface Standing {
  readonly offers: readonly Offer[];
  readonly question?: Question;
}

/** What is shown, where the room stands then, and whether the person leaves. */
export interface Reply extends Standing {
  readonly text: string;
  readonly leave: boolean;
}

/** Answers one typed line. Never rejects: a Problem is shown, any other error is reported and named by its id. */
export async function replyTo(typed: string, before: Standing, desk: Desk, style: Style): Promise<Reply> {
  try {
    const { question } = before;
    if (question === undefined || typed.trim().startsWith('/')) {
      return await replyToText(typed, before.offers, desk, style);
    }
    return await replyToValue(typed, question, desk, style);
  } catch (error) {
    const text = `Something went wrong on my side. It is logged as ${desk.reportFailure(error)}. The room goes on.`;
    return { text: page(wrap(text, style.width)), offers: [], leave: false };
  }
}

function replyToText(typed: string, offers: readonly Offer[], desk: Desk, style: Style): Promise<Reply> {
  return solving(
    async () => {
      const confirmed = confirmedOffer(typed, offers);
      if (confirmed !== undefined) return taken(confirmed, desk, style);
      const line = readLine(typed, desk.commands);
      if (line.kind === 'empty') return { text: '', offers, leave: false };
      if (line.kind === 'pick') return picked(line.number, offers, desk, style);
      return replyToLine(line, desk, style);
    },
    (problem) => chosenInText(typed, problem, desk.commands),
    style,
  );
}

/** Takes a line as the value of the option asked for; one it refuses is asked for again. */
async function replyToValue(typed: string, question: Question, desk: Desk, style: Style): Promise<Reply> {
  const value = typed.trim();
  if (value === '') return { text: page(['Given up. Nothing was changed.']), offers: [], leave: false };
  try {
    checkLength(typed);
    return await goOn(answeredWith(value, question), desk, style);
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    const text = renderProblem(problem, style, false) + asking(question, style);
    return { text, offers: [], question, leave: false };
  }
}

/** Asks for the next option, or runs the command when none is left. */
async function goOn(question: Question, desk: Desk, style: Style): Promise<Reply> {
  if (question.open.length === 0) return replyToLine(question.line, desk, style);
  return { text: asking(question, style), offers: [], question, leave: false };
}

async function picked(number: number, offers: readonly Offer[], desk: Desk, style: Style): Promise<Reply> {
  const offer = offers[number - 1];
  if (offer === undefined) {
    const range =
      offers.length === 0 ? 'There is nothing to pick from now' : `I offered 1 to ${offers.length}`;
    const hint = 'A number alone picks from a list. Otherwise say what it is: 75 gal, 8.3 dKH.';
    const problem = new Problem(`${range}.`, { field: 'number', given: String(number), hint });
    return { text: renderProblem(problem, style, false), offers, leave: false };
  }
  const reply = await taken(offer, desk, style);
  const doing = typeof offer !== 'string' && offer.kind === 'question' ? 'Filling in ' : 'Running ';
  return { ...reply, text: page(wrap(typedForm(offer), style.width, doing)) + reply.text };
}

function taken(offer: Offer, desk: Desk, style: Style): Promise<Reply> {
  if (typeof offer === 'string') return replyToText(offer, [], desk, style);
  return offer.kind === 'question' ? goOn(offer, desk, style) : replyToLine(offer, desk, style);
}

async function replyToLine(line: Line, desk: Desk, style: Style): Promise<Reply> {
  const { zone, keep } = desk;
  const context = { nowMs: desk.nowMs(), reader: desk.reader, zone, keep, talk: desk.talk() };
  switch (line.kind) {
    case 'command': {
      const command = commandNamed(nameOf(line), desk.commands);
      if (command === undefined) throw new Error(`no command ${nameOf(line)}`);
      return solving(
        async () => answered(runWithDefaults(command, withFiles(command, line.input), context), desk, style),
        (problem) => chosenInCommand(line, command, problem),
        style,
      );
    }
    case 'words':
      return solving(
        async () => answered(desk.ask(line.text, context), desk, style),
        (problem) => chosenInWords(line.text, problem),
        style,
      );
    case 'help':
      return { text: helpPage(line.topic, desk.commands, style), offers: [], leave: false };
    default:
      return { text: '', offers: [], leave: line.kind === 'quit' };
  }
}

async function answered(given: Answer, desk: Desk, style: Style): Promise<Reply> {
  const answer = inWords(withNotices(given, desk.keep), desk);
  const offers = answer.next.map((action) => actionOffer(action, desk.commands));
  return { text: renderAnswer(answer, style, await writeFiles(answer, desk)), offers, leave: false };
}

/** Runs; a Problem becomes a reply whose choices can be picked where they can be put in. */
async function solving(
  run: () => Promise<Reply>,
  choose: (problem: Problem) => readonly Offer[],
  style: Style,
): Promise<Reply> {
  try {
    return await run();
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    const offers = choose(problem);
    return { text: renderProblem(problem, style, offers.length > 0), offers, leave: false };
  }
}
