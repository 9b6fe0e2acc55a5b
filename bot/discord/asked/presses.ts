import type { ButtonInteraction } from 'discord.js';
import { openShortMemory } from '../../short-memory.ts';

/** A second press of the same button by the same person within this belongs to the first; own choice. */
const SAME_MS = 2000;
const MOST_PRESSES = 1000;

/** Tells whether a press is a new one, or one of a double press. */
export function newPresses(nowMs: () => number): (press: ButtonInteraction) => boolean {
  const pressed = openShortMemory<true>(nowMs, MOST_PRESSES, SAME_MS);
  return ({ message, customId, user }) => {
    const key = `${message.id} ${user.id} ${customId}`;
    if (pressed.get(key) !== undefined) return false;
    pressed.put(key, true);
    return true;
  };
}
