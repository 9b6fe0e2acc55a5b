import type { Fact } from '../../../commands/answer.ts';

const isId = /^\d{17,20}$/;

/** What Discord itself puts in words for each reader: someone's name, a channel, a role. It pings nobody. */
export function tailOf(fact: Fact | undefined): string {
  if (fact === undefined) return '';
  const { personId, channelId, roleId } = fact;
  return named('@', personId) + named('#', channelId) + named('@&', roleId);
}

function named(sign: string, id: string | undefined): string {
  return id !== undefined && isId.test(id) ? ` <${sign}${id}>` : '';
}
