import { answer, type Answer } from '../commands/answer.ts';
import { say } from '../core/wording/say.ts';

/** Answers one member may have at once; this project's own choice. */
const IN_HAND = 12;
/** After that one more each time this has passed. */
const EVERY_MS = 5000;
/** Members remembered at once. */
const MOST_MEMBERS = 10_000;

/** Whether a member may have an answer now; one that may not is told so once until they may again. */
export type Turn = 'now' | 'tell to wait' | 'wait';

/** A bucket of answers for each member, in memory. */
export function openTurns(nowMs: () => number): (personId: string) => Turn {
  const members = new Map<string, { left: number; atMs: number; told: boolean }>();
  return (personId) => {
    const now = nowMs();
    const was = members.get(personId) ?? { left: IN_HAND, atMs: now, told: false };
    const left = Math.min(IN_HAND, was.left + (now - was.atMs) / EVERY_MS);
    const may = left >= 1;
    members.delete(personId);
    members.set(personId, { left: may ? left - 1 : left, atMs: now, told: !may });
    const [oldest] = members.keys();
    if (members.size > MOST_MEMBERS && oldest !== undefined) members.delete(oldest);
    if (may) return 'now';
    return was.told ? 'wait' : 'tell to wait';
  };
}

/** The kind sentence for one who asks faster than that. */
export function tooFast(): Answer {
  return answer({
    headline: say('discord.tooFast'),
    steps: [say('discord.howFast', { times: IN_HAND, seconds: EVERY_MS / 1000 }), say('discord.nothingLost')],
  });
}
