import { shortForm } from '../../commands/short.ts';
import { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';
import type { Desk, Reply, Standing } from './desk.ts';
import { actionOffer } from './offer.ts';
import { renderLong } from './long-page.ts';
import { renderShort } from './render.ts';
import type { Style } from './wrap.ts';

/** Everything the last answer holds. @throws Problem where there is none yet. */
export function whole({ shown }: Standing, desk: Desk, style: Style): Reply {
  if (shown === undefined) throw nothingShown('why');
  const offers = shown.answer.next.map((action) => actionOffer(action, desk.commands));
  return { text: renderLong(shown.answer, style), offers, leave: false };
}

/** The next page of the last answer. @throws Problem after the last one. */
export function nextPage({ shown, offers }: Standing, style: Style): Reply {
  if (shown === undefined || shown.at >= shortForm(shown.answer).pages) throw nothingShown('more');
  const next = { ...shown, at: shown.at + 1 };
  return { text: renderShort(next.answer, style, { at: next.at }), offers, shown: next, leave: false };
}

function nothingShown(given: 'why' | 'more'): Problem {
  const message = say(given === 'why' ? 'terminal.nothingShown' : 'terminal.thatWasAll');
  return new Problem(message, { field: 'line', given, hint: say('terminal.hintAskOrHelp') });
}
