import type { Answer } from '../../../commands/answer.ts';
import type { Short } from '../../../commands/short.ts';
import { say } from '../../../core/wording/say.ts';

/** What the long form has and the short one has not, in words where words help; undefined where that is nothing. */
export function leftOf(answer: Answer, short: Short): string | undefined {
  const { echo, read, unused, working, cautions, sources, table, next } = answer;
  const buttons = next.length - short.next.length;
  const words = [
    ...(short.left === '' ? [] : [short.left]),
    ...(buttons > 0 ? [say('discord.moreButtons', { count: buttons })] : []),
  ];
  const notUsed = unused.length === 0 ? [] : [`not used: ${unused.join(', ')}`];
  const isReadCut = [...read, ...notUsed].join('; ') !== short.read;
  const isTableCut = table !== undefined && table.head.length !== short.table?.head.length;
  const hasMore = [working, cautions, sources].some(({ length }) => length > 0);
  const isMore = words.length > 0 || hasMore || echo !== undefined || isReadCut || isTableCut;
  return isMore ? words.join(', ') : undefined;
}
