import type { Answer, Fact } from '../../commands/answer.ts';
import type { Keep } from '../../commands/keep.ts';

interface Here {
  readonly keep: Keep;
  /** IANA zone of this machine. */
  readonly zone: string;
}

/** The zone times are told in: the person's own where they said it. */
export function zoneHere({ keep, zone }: Here): string {
  return keep.zone() ?? zone;
}

/** An answer whose people, channels and roles are told as ids. */
export function inWords(answer: Answer): Answer {
  return { ...answer, facts: answer.facts.map((fact) => ({ ...fact, value: fact.value + tailOf(fact) })) };
}

function tailOf({ personId, channelId, roleId }: Fact): string {
  const ids = [personId, channelId, roleId].filter((id) => id !== undefined);
  return ids.map((id) => ` ${id}`).join('');
}
