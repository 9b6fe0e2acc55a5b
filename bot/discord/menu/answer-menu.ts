import type { MessageContextMenuCommandInteraction } from 'discord.js';
import { answer } from '../../../commands/answer.ts';
import type { Answer } from '../../../commands/answer.ts';
import { takesAnew } from '../../../commands/ask/offer.ts';
import { MAX_MESSAGE_LENGTH } from '../../../core/message-length.ts';
import { placeOf } from '../asked/place.ts';
import type { PlaceHere } from '../asked/place.ts';
import { runApart } from '../outcome.ts';
import type { Desk, Outcome } from '../outcome.ts';
import { holderFor } from '../held/holder.ts';
import type { Drawn } from '../message/drawn.ts';
import { reply } from '../send.ts';
import type { Drafts } from './drafts.ts';
import { hindrance } from './hindrance.ts';
import { menus } from './menus.ts';
import { plainText } from './plain-text.ts';
import { postId } from './post.ts';

/** Answers what someone asks of another's message: for their eyes only, with a button to post it where that can be. */
export async function answerMenu(
  desk: Desk,
  drafts: Drafts,
  interaction: MessageContextMenuCommandInteraction,
): Promise<void> {
  const { targetMessage: message, user, channelId } = interaction;
  const place = placeOf(desk, interaction);
  const menu = menus.find(({ name }) => name === interaction.commandName);
  if (menu === undefined) return reply(desk, interaction, refusal('This menu is no longer here.'));
  const text = plainText(message.content);
  const unread = unreadable(text, message.author.bot === true);
  const outcome = unread ?? runApart(desk, user.id, place, (context) => menu.run(desk, text, context));
  const hindered = place === undefined ? undefined : hindrance(place);
  const canPost = place !== undefined && hindered === undefined && !outcome.hidden;
  if (canPost) {
    drafts.put(interaction.id, {
      helperId: user.id,
      channelId,
      messageId: message.id,
      answer: forItsWriter(outcome.answer),
    });
  }
  const seen = outcome.hidden ? outcome.answer : privately(forItsWriter(outcome.answer), place, hindered);
  const shown = { ...seen, ...(canPost ? { postId: postId(interaction.id) } : {}) };
  const hold = holderFor({ ...desk, held: drafts.held }, { personId: user.id, isPrivate: true });
  await reply(desk, interaction, { answer: shown, hidden: true }, hold);
}

/** Why nothing is worked out from a message. */
function unreadable(text: string, isBots: boolean): Outcome | undefined {
  if (isBots) return refusal('A bot wrote that: I only work out what people write.');
  if (text === '') {
    return refusal(
      'I found no words in that message: pictures I can not read.',
      'Ask its writer for the numbers as text, or type what you see: /ask or /checkup.',
    );
  }
  if (text.length <= MAX_MESSAGE_LENGTH) return undefined;
  return refusal(
    `That message is longer than I can read here: ${text.length} letters, and I read at most ${MAX_MESSAGE_LENGTH}.`,
    'Copy the part with the numbers, and give it to /ask or /checkup.',
  );
}

function refusal(headline: string, ...steps: readonly string[]): Outcome {
  return { answer: answer({ headline, steps }), hidden: true };
}

/** Their message is remembered for nobody, so nothing can take it anew. */
function forItsWriter(given: Answer): Answer {
  return { ...given, next: given.next.filter((one) => !takesAnew(one)) };
}

/** Buttons are for the writer, once it is posted: here they would work with the helper's own tank. */
function privately(given: Answer, place: PlaceHere | undefined, hindered: string | undefined): Drawn {
  const choices = given.next.map(({ label }) => label).join('; ');
  const asked = choices === '' ? [] : [{ label: 'buttons for its writer', value: choices }];
  const apart = { label: 'worked out', value: 'from that message alone, with no tank of anyone' };
  const why =
    place === undefined || hindered === undefined ? [] : [{ label: 'can not be posted', value: hindered }];
  return { ...given, notes: [...asked, apart, ...why], next: [] };
}
