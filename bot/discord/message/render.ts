import { withInstants } from '../../../commands/instants.ts';
import { localAnswer } from '../../../commands/local-answer.ts';
import { withSentences } from '../../../commands/sentences.ts';
import { shortForm } from '../../../commands/short.ts';
import type { Short } from '../../../commands/short.ts';
import { localeInForce } from '../../../core/wording/in-locale.ts';
import { say } from '../../../core/wording/say.ts';
import { lookId } from '../asked/held-id.ts';
import { button, buttonsOf } from './buttons.ts';
import type { Button } from './buttons.ts';
import { contained } from './container.ts';
import type { Rendered } from './container.ts';
import type { Drawn } from './drawn.ts';
import { holdsNothing } from './holder.ts';
import type { Holder } from './holder.ts';
import { leftOf } from './left.ts';
import { longSections } from './long.ts';
import { stampMark, unmarked } from './stamp.ts';
import { shortSections } from './short.ts';

const mostButtons = 10;

/**
 * An answer in its short form, with buttons for all it leaves out; where that cannot be held, in its long form. Nothing in
 * it is read as Markdown.
 */
export function render(given: Drawn, hold: Holder = holdsNothing): Rendered {
  const answer = asShown(given);
  const short = shortForm(answer);
  const left = leftOf(answer, short);
  if (left === undefined && short.pages === 1) return drawShort(answer, short, '', [], hold);
  const id = hold.answer(given);
  return id === undefined ? renderLong(given, hold) : drawPage(answer, short, { id, page: 1, left }, hold);
}

/** A page of an answer that is held under `id`. */
export function renderPage(given: Drawn, id: string, page: number, hold: Holder): Rendered {
  const answer = asShown(given);
  const short = shortForm(answer, page);
  return drawPage(answer, short, { id, page, left: leftOf(answer, shortForm(answer)) }, hold);
}

/** Everything. */
export function renderLong(given: Drawn, hold: Holder = holdsNothing): Rendered {
  const answer = asShown(given);
  const next = buttonsOf(answer.next, mostButtons, hold.call);
  return contained(answer, longSections(answer), [next, postButton(answer)]);
}

/** Its moments as Discord's stamps, its numbers and days as the reader's locale writes them. */
function asShown(given: Drawn): Drawn {
  return localAnswer(withInstants(withSentences(given, unmarked), stampMark), localeInForce());
}

interface Page {
  readonly id: string;
  readonly page: number;
  readonly left: string | undefined;
}

function drawPage(answer: Drawn, short: Short, { id, page, left }: Page, hold: Holder): Rendered {
  const { pages } = short;
  const why = left === undefined ? [] : [button(lookId({ kind: 'why', id }), say('answer.why'))];
  const label = say('answer.more', { page: page + 1, pages });
  const more = page < pages ? [button(lookId({ kind: 'more', id, page: page + 1 }), label)] : [];
  return drawShort(answer, short, left ?? '', [...why, ...more], hold);
}

function drawShort(
  answer: Drawn,
  short: Short,
  left: string,
  looks: readonly Button[],
  hold: Holder,
): Rendered {
  const next = buttonsOf(short.next, mostButtons, hold.call);
  return contained(answer, shortSections(answer, short, left), [next, [...looks, ...postButton(answer)]]);
}

function postButton({ postId }: Drawn): readonly Button[] {
  return postId === undefined ? [] : [button(postId, say('answer.post'))];
}
