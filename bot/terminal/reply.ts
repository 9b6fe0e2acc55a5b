import { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';
import { nextPage, whole } from './again.ts';
import { chosenByWords } from './chosen-words.ts';
import type { Desk, Reply, Standing } from './desk.ts';
import { chosenInText, confirmedOffer, typedForm, type Offer } from './offer.ts';
import { answeredWith, asking, type Question } from './question.ts';
import { checkLength, readLine } from './read.ts';
import { page, renderProblem } from './render.ts';
import { replyToLine, solving } from './run-line.ts';
import { saysDone, settled } from './settled.ts';
import { wrap, type Style } from './wrap.ts';

/** Answers one typed line. Never rejects: a Problem is shown, any other error is reported and named by its id. */
export async function replyTo(typed: string, before: Standing, desk: Desk, style: Style): Promise<Reply> {
  try {
    const { question } = before;
    const reply =
      question === undefined || typed.trim().startsWith('/')
        ? await replyToText(typed, before, desk, style)
        : await replyToValue(typed, question, desk, style);
    return lasting(reply, before);
  } catch (error) {
    const text = say('terminal.failed', { errorId: desk.reportFailure(error) });
    return { text: page(wrap(text, style.width)), offers: [], leave: false };
  }
}

/** Numbers and the last answer stay until there are others. */
function lasting(reply: Reply, before: Standing): Reply {
  const shown = reply.shown ?? before.shown;
  const isFresh = reply.offers.length > 0;
  return {
    ...reply,
    isFresh,
    offers: isFresh ? reply.offers : before.offers,
    ...(shown === undefined ? {} : { shown }),
  };
}

function replyToText(typed: string, before: Standing, desk: Desk, style: Style): Promise<Reply> {
  const { offers, choices = [], isFresh = false } = before;
  return solving(
    async () => {
      const confirmed = isFresh ? confirmedOffer(typed, offers) : undefined;
      const chosen = confirmed ?? offers[chosenByWords(typed, choices) ?? -1];
      if (chosen !== undefined) return taken(chosen, desk, style);
      if (saysDone(typed) && desk.due().length > 0) return settled(desk, style);
      const line = readLine(typed, desk.commands);
      switch (line.kind) {
        case 'empty':
          return { text: '', offers, choices, leave: false };
        case 'pick':
          return picked(line.number, offers, desk, style);
        case 'why':
          return whole(before, desk, style);
        case 'more':
          return nextPage(before, style);
        default:
          return replyToLine(line, desk, style);
      }
    },
    (problem) => chosenInText(typed, problem, desk.commands),
    style,
  );
}

/** Takes a line as the value of the option asked for; one it refuses is asked for again. */
async function replyToValue(typed: string, question: Question, desk: Desk, style: Style): Promise<Reply> {
  const value = typed.trim();
  if (value === '') return { text: page([say('terminal.givenUp')]), offers: [], leave: false };
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
    const message =
      offers.length === 0
        ? say('terminal.nothingToPick')
        : say('terminal.offeredTo', { most: String(offers.length) });
    const hint = say('terminal.hintPick');
    const problem = new Problem(message, { field: 'number', given: String(number), hint });
    return { text: renderProblem(problem, style, false), offers, leave: false };
  }
  const reply = await taken(offer, desk, style);
  const isForm = typeof offer !== 'string' && offer.kind === 'question';
  const doing = say(isForm ? 'terminal.fillingIn' : 'terminal.running');
  return { ...reply, text: page(wrap(typedForm(offer), style.width, `${doing} `)) + reply.text };
}

function taken(offer: Offer, desk: Desk, style: Style): Promise<Reply> {
  if (typeof offer === 'string') return replyToText(offer, { offers: [] }, desk, style);
  return offer.kind === 'question' ? goOn(offer, desk, style) : replyToLine(offer, desk, style);
}
