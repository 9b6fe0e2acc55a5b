import { DiscordAPIError, RESTJSONErrorCodes, Routes } from 'discord.js';
import type { ButtonInteraction, Client } from 'discord.js';
import { answer } from '../../../commands/answer.ts';
import type { Answer } from '../../../commands/answer.ts';
import { placeOf } from '../asked/place.ts';
import type { Drawn } from '../message/drawn.ts';
import type { Desk } from '../outcome.ts';
import { defer, notDelivered, replyDeferred, replyToMessage } from '../send.ts';
import { say } from '../../../core/wording/say.ts';
import type { Draft, Drafts } from './drafts.ts';
import { hindrance } from './hindrance.ts';

const prefix = 'post:';

/** The custom id of the button that posts the draft of this id. */
export function postId(id: string): string {
  return `${prefix}${id}`;
}

export function isPostId(customId: string): boolean {
  return customId.startsWith(prefix);
}

/** Posts a draft as a reply to the message it is about, and tells the helper how that went. */
export async function answerPost(desk: Desk, drafts: Drafts, interaction: ButtonInteraction): Promise<void> {
  if (await defer(desk.log, interaction, true)) {
    await replyDeferred(desk, interaction, { answer: await posted(desk, drafts, interaction), hidden: true });
  }
}

async function posted(desk: Desk, drafts: Drafts, interaction: ButtonInteraction): Promise<Answer> {
  const { customId, user, channelId, client } = interaction;
  const place = placeOf(desk, interaction);
  const hindered = place === undefined ? say('discord.onlyInServers') : hindrance(place);
  if (hindered !== undefined) return answer({ headline: say('discord.notPosted', { why: hindered }) });
  const draft = drafts.take(customId.slice(prefix.length), user.id);
  if (draft === undefined || draft.channelId !== channelId) return noDraft();
  const { messageId: id, helperId: personId } = draft;
  const found = await isThere(desk, client, draft);
  if (found === false) return answer({ headline: say('discord.messageGone') });
  const target = { client, channelId, id };
  const sentId =
    found &&
    (await replyToMessage(desk, target, signed(draft), { personId, isPrivate: false, pingsAuthor: true }));
  return sentId === undefined ? notPosted() : answer({ headline: say('discord.posted') });
}

function noDraft(): Answer {
  return answer({ headline: say('discord.noDraft'), steps: [say('discord.draftKept')] });
}

function notPosted(): Answer {
  return answer({ headline: say('discord.notTaken'), steps: [say('discord.chooseAgain')] });
}

/** Everybody sees at whose wish it was posted; it pings nobody but the writer of the message. */
function signed({ answer: given, helperId }: Draft): Drawn {
  return {
    ...given,
    notes: [{ label: say('discord.postedBy'), value: say('discord.aHelper'), personId: helperId }],
  };
}

/** Whether the message is still there; undefined where Discord does not say. */
async function isThere(
  { log }: Desk,
  { rest }: Client,
  { channelId, messageId }: Draft,
): Promise<boolean | undefined> {
  try {
    await rest.get(Routes.channelMessage(channelId, messageId));
    return true;
  } catch (error) {
    if (error instanceof DiscordAPIError && error.code === RESTJSONErrorCodes.UnknownMessage) return false;
    notDelivered(log, error, { channel: channelId, message: messageId });
    return undefined;
  }
}
