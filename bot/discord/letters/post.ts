import { DiscordAPIError, Routes } from 'discord.js';
import type { Letter, Post } from '../../clock/post.ts';
import type { Wire } from '../callback.ts';
import type { HeldDesk } from '../held/holder.ts';
import { asking, letterRest } from './letter-rest.ts';
import type { Ask, LetterRestParts } from './letter-rest.ts';
import { letterWire } from './letter-wire.ts';
import { hasOwn } from './own-mark.ts';
import { ours, undelivered } from './undelivered.ts';
import { within } from './within.ts';

export type PostParts = LetterRestParts & HeldDesk;

/** A letter takes no longer than this, waits included; what takes longer is tried again later. */
const longestMs = 15_000;
/** How many messages of the channel are looked through for an earlier attempt. */
const lookBack = 50;

/** Sends letters on Discord. */
export function openPost(parts: PostParts): Post {
  const { log } = parts;
  const rest = letterRest(parts);
  /** Channels of direct messages by person, for as long as the process lives. */
  const opened = new Map<string, string>();

  const openDirect = async (ask: Ask, personId: string): Promise<string> => {
    const known = opened.get(personId);
    if (known !== undefined) return known;
    const body = { recipient_id: personId };
    const channel = await ask((signal) => rest.post(Routes.userChannels(), { body, signal }));
    const { id } = channel as { readonly id: string };
    opened.set(personId, id);
    return id;
  };

  /** Whoever left the server would not see what is posted there. */
  const channelFor = async (ask: Ask, { place, toPersonId }: Letter): Promise<string> => {
    if (place.kind === 'direct') return openDirect(ask, toPersonId);
    await ask((signal) => rest.get(Routes.guildMember(place.serverId, toPersonId), { signal }));
    return place.channelId;
  };

  /**
   * Whether an earlier attempt arrived. Without the permission Read Message History nothing is found and the letter is
   * sent; then the nonce alone keeps it from arriving twice, for the few minutes Discord remembers it.
   */
  const arrived = async (ask: Ask, channelId: string, { mark }: Letter): Promise<boolean> => {
    if (mark === undefined) return false;
    const query = new URLSearchParams({ limit: String(lookBack) });
    try {
      const found = await ask((signal) => rest.get(Routes.channelMessages(channelId), { query, signal }));
      return hasOwn(found, mark);
    } catch (error) {
      if (error instanceof DiscordAPIError) return false;
      throw error;
    }
  };

  const deliver = async (ask: Ask, letter: Letter, { body, files }: Wire): Promise<void> => {
    const channelId = await channelFor(ask, letter);
    if (letter.attempts > 0 && (await arrived(ask, channelId, letter))) return;
    await ask((signal) => rest.post(Routes.channelMessages(channelId), { body, files: [...files], signal }));
  };

  return {
    send: async (letter, hurry) => {
      const ids = { nonce: letter.nonce, user: letter.toPersonId };
      const wire = wireOf(parts, letter);
      if (wire instanceof Error) return ours(log, wire, ids);
      try {
        await within(longestMs, hurry, (signal) => deliver(asking(signal), letter, wire));
        return { kind: 'sent' };
      } catch (error) {
        return undelivered(log, error, ids);
      }
    },
  };
}

function wireOf(desk: HeldDesk, letter: Letter): Wire | Error {
  try {
    return letterWire(desk, letter);
  } catch (error) {
    return error instanceof Error ? error : new Error('a letter cannot be written', { cause: error });
  }
}
