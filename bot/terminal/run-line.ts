import type { Answer } from '../../commands/answer.ts';
import { askedFirst } from '../../commands/asked-first.ts';
import { runWithDefaults } from '../../commands/defaults.ts';
import { forAsker, wordsOf } from '../../commands/for-asker.ts';
import { localAnswer } from '../../commands/local-answer.ts';
import { commandNamed, nameOf } from '../../commands/named.ts';
import { shortForm } from '../../commands/short.ts';
import { Problem } from '../../core/problem.ts';
import { localeInForce } from '../../core/wording/in-locale.ts';
import { withNotices } from '../notices.ts';
import type { Desk, Reply } from './desk.ts';
import { withFiles } from './given-file.ts';
import { helpPage } from './help.ts';
import { actionOffer, chosenInCommand, chosenInWords, type Offer } from './offer.ts';
import { writeFiles } from './output-files.ts';
import { asking, questionOf, type Question } from './question.ts';
import type { Line } from './read.ts';
import { renderProblem, renderShort } from './render.ts';
import { inWords } from './told.ts';
import type { Style } from './wrap.ts';

/** Runs what a line asks for. */
export async function replyToLine(line: Line, desk: Desk, style: Style): Promise<Reply> {
  const { zone, keep } = desk;
  const locale = localeInForce();
  const known = { zone, ...(locale === undefined ? {} : { locale }) };
  const context = { nowMs: desk.nowMs(), reader: desk.reader, ...known, keep, talk: desk.talk() };
  switch (line.kind) {
    case 'command': {
      const command = commandNamed(nameOf(line), desk.commands);
      if (command === undefined) throw new Error(`no command ${nameOf(line)}`);
      const open = askedFirst(command, line.input);
      if (open.length > 0) return asked(questionOf(line, command, open), style);
      return solving(
        async () => {
          const given = runWithDefaults(command, withFiles(command, line.input), context);
          return answered(forAsker(given, wordsOf(line.input), context), desk, style);
        },
        (problem) => chosenInCommand(line, command, problem),
        style,
      );
    }
    case 'words':
      return solving(
        async () => answered(forAsker(desk.ask(line.text, context), line.text, context), desk, style),
        (problem) => chosenInWords(line.text, problem),
        style,
      );
    case 'help':
      return { text: helpPage(line.topic, desk.commands, style), offers: [], leave: false };
    default:
      return { text: '', offers: [], leave: line.kind === 'quit' };
  }
}

function asked(question: Question, style: Style): Reply {
  return { text: asking(question, style), offers: [], question, leave: false };
}

async function answered(given: Answer, desk: Desk, style: Style): Promise<Reply> {
  const answer = localAnswer(inWords(withNotices(given, desk.keep)), localeInForce());
  const { next } = shortForm(answer);
  const offers = next.map((action) => actionOffer(action, desk.commands));
  const choices = answer.tone === 'question' ? next.map(({ label }) => label) : [];
  const text = renderShort(answer, style, { written: await writeFiles(answer, desk) });
  return { text, offers, choices, shown: { answer, at: 1 }, leave: false };
}

/** Runs; a Problem becomes a reply whose choices can be picked where they can be put in. */
export async function solving(
  run: () => Promise<Reply>,
  choose: (problem: Problem) => readonly Offer[],
  style: Style,
): Promise<Reply> {
  try {
    return await run();
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    const offers = choose(problem);
    const choices = offers.length > 0 ? problem.choices : [];
    return { text: renderProblem(problem, style, offers.length > 0), offers, choices, leave: false };
  }
}
