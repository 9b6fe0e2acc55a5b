import type { Answer } from '../../commands/answer.ts';
import { forAsker } from '../../commands/for-asker.ts';
import {
  askSitterAnswer,
  carePlanAnswer,
  handOverNewsAnswer,
} from '../../commands/remind/hand-over-answers.ts';
import { say } from '../../core/wording/say.ts';
import { againMs } from './again.ts';
import type { DeliveryParts } from './deliver.ts';
import type { DueHandOver, HandOverNews } from './due.ts';
import type { Letter } from './post.ts';

type To = 'owner' | 'sitter';
type Parts = Parameters<typeof handOverNewsAnswer>[0];

const readers: Readonly<Record<HandOverNews, readonly To[]>> = {
  'ask the sitter': ['sitter'],
  accepted: ['sitter', 'owner'],
  declined: ['owner'],
  ended: ['owner', 'sitter'],
};

/**
 * Tells the news of a hand-over. A sitter who cannot be reached ends it, and its owner gets a notice. `told` holds the
 * nonces that arrived, so that of two letters the first is not sent again when the second has to wait.
 */
export async function tell(
  parts: DeliveryParts,
  claimed: DueHandOver,
  told: Set<string>,
  hurry: AbortSignal,
): Promise<void> {
  const { due, post, clock } = parts;
  const { news, attempts } = claimed;
  const { id } = claimed.handOver;
  let notice: string | undefined;
  for (const to of readers[news]) {
    const letter = newsLetter(parts, claimed, to);
    const posted = told.has(letter.nonce) ? ({ kind: 'sent' } as const) : await post.send(letter, hurry);
    if (posted.kind === 'later') return due.putOffHandOver(id, againMs(clock.nowMs(), attempts, posted));
    if (posted.kind === 'sent') told.add(letter.nonce);
    else notice ??= noticeOf(news, to, letter.answer, posted.why);
    if (notice !== undefined) break;
  }
  for (const to of readers[news]) told.delete(nonceOf(claimed, to));
  due.settleHandOver(id, news, notice);
}

/** What the owner is told at their next command where a letter could not be delivered, if that is of use then. */
function noticeOf(news: HandOverNews, to: To, letter: Answer, why: string): string | undefined {
  if (to === 'owner') return news === 'accepted' ? undefined : letter.headline;
  if (news === 'ended') return undefined;
  return say('schedule.sitterNotReached', { why });
}

function newsLetter({ keepFor, clock }: DeliveryParts, claimed: DueHandOver, to: To): Letter {
  const { handOver, news, attempts } = claimed;
  const keep = keepFor(handOver.ownerId);
  const { tankId } = handOver;
  const tanks = keep.tanks().filter((tank) => tankId === undefined || tank.id === tankId);
  const reminders = keep.reminders().filter((each) => tankId === undefined || each.tankId === tankId);
  const zone = keep.zone() ?? 'UTC';
  const nowMs = clock.nowMs();
  const told: Parts = { handOver, news, tanks, reminders, latest: keep.latest, nowMs, zone, to };
  const texts = reminders.map(({ text }) => text).join('; ');
  const answer = forAsker(answerOf(told), texts, { nowMs, keep });
  const mark = answer.next.find(({ command }) => command === 'remind sit');
  const toPersonId = to === 'owner' ? handOver.ownerId : handOver.sitterId;
  const locale = to === 'owner' ? keep.locale() : undefined;
  return {
    toPersonId,
    place: { kind: 'direct' },
    answer,
    nonce: nonceOf(claimed, to),
    mark,
    attempts,
    locale,
  };
}

function answerOf(parts: Parts): Answer {
  if (parts.to === 'sitter' && parts.news === 'ask the sitter') return askSitterAnswer(parts);
  if (parts.to === 'sitter' && parts.news === 'accepted') return carePlanAnswer(parts);
  return handOverNewsAnswer(parts);
}

/** "h12-ask-s", "h12-accepted-o": one for each reader. */
function nonceOf({ handOver, news }: DueHandOver, to: To): string {
  return `h${handOver.id}-${news.split(' ')[0]}-${to[0]}`;
}
