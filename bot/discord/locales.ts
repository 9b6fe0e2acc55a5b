import type { Interaction, Message } from 'discord.js';
import { openShortMemory } from '../short-memory.ts';

const MOST_MEMBERS = 5000;
const KEPT_MS = 30 * 86_400_000;

/** The locale of what members use Discord in. Only interactions tell it; for their messages it is remembered here. */
export interface Locales {
  readonly ofInteraction: (interaction: Interaction) => string;
  /** The one of the writer's last interaction, else of the server; undefined where neither is known. */
  readonly ofMessage: (message: Message) => string | undefined;
}

/** In memory alone, gone with the process. */
export function openLocales(nowMs: () => number): Locales {
  const seen = openShortMemory<string>(nowMs, MOST_MEMBERS, KEPT_MS);
  return {
    ofInteraction: ({ user, locale }) => {
      seen.put(user.id, locale);
      return locale;
    },
    ofMessage: ({ author, guild }) => seen.get(author.id) ?? guild?.preferredLocale,
  };
}
