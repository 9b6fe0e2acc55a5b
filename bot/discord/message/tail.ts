import type { Fact } from '../../../commands/answer.ts';

const isId = /^\d{17,20}$/;
/** The last instant a date can hold (ECMAScript 21.4.1.1), ms. */
const lastMs = 8.64e15;

/** What Discord itself puts in words for each reader: an instant in their zone, someone's name. It pings nobody. */
export function tailOf(fact: Fact | undefined): string {
  if (fact === undefined) return '';
  const { atMs, personId, channelId, roleId } = fact;
  return instant(atMs) + named('@', personId) + named('#', channelId) + named('@&', roleId);
}

function instant(atMs: number | undefined): string {
  if (atMs === undefined || !(Math.abs(atMs) <= lastMs)) return '';
  const seconds = Math.floor(atMs / 1000);
  return ` <t:${seconds}:F> (<t:${seconds}:R>)`;
}

function named(sign: string, id: string | undefined): string {
  return id !== undefined && isId.test(id) ? ` <${sign}${id}>` : '';
}
