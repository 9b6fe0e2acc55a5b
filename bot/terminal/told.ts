import type { Answer, Fact } from '../../commands/answer.ts';
import type { Keep } from '../../commands/keep.ts';
import { localTime } from '../../core/words/when.ts';

interface Here {
  readonly keep: Keep;
  /** IANA zone of this machine. */
  readonly zone: string;
}

/** The zone times are told in: the person's own where they said it. */
export function zoneHere({ keep, zone }: Here): string {
  return keep.zone() ?? zone;
}

/** An answer whose instants are local times and whose people, channels and roles are ids, in words. */
export function inWords(answer: Answer, here: Here): Answer {
  const { facts } = answer;
  return facts.every((fact) => tailOf(fact, here) === '')
    ? answer
    : { ...answer, facts: facts.map((fact) => ({ ...fact, value: fact.value + tailOf(fact, here) })) };
}

function tailOf({ value, atMs, personId, channelId, roleId }: Fact, here: Here): string {
  const at = atMs === undefined ? '' : localTime(atMs, zoneHere(here));
  const time = at === '' || value.includes(at) ? '' : ` (${at})`;
  const ids = [personId, channelId, roleId].filter((id) => id !== undefined);
  return time + ids.map((id) => ` ${id}`).join('');
}
