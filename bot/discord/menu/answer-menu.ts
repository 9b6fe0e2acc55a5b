import type { MessageContextMenuCommandInteraction } from 'discord.js';
import { answer } from '../../../commands/answer.ts';
import type { Answer } from '../../../commands/answer.ts';
import { takesAnew } from '../../../commands/ask/offer.ts';
import { forAsker } from '../../../commands/for-asker.ts';
import { MAX_MESSAGE_LENGTH } from '../../../core/message-length.ts';
import { placeOf } from '../asked/place.ts';
import type { PlaceHere } from '../asked/place.ts';
import { runApart } from '../outcome.ts';
import type { Desk, Outcome } from '../outcome.ts';
import { holderFor } from '../held/holder.ts';
import type { Drawn } from '../message/drawn.ts';
import { reply } from '../send.ts';
import { say } from '../../../core/wording/say.ts';
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
  if (menu === undefined) return reply(desk, interaction, refusal(say('discord.menuGone')));
  const text = plainText(message.content);
  const unread = unreadable(text, message.author.bot === true);
  const outcome =
    unread ??
    runApart(desk, user.id, place, (context) => forAsker(menu.run(desk, text, context), text, context));
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
  if (isBots) return refusal(say('discord.botWroteThat'));
  if (text === '') {
    return refusal(say('discord.noWords'), say('discord.askForText'));
  }
  if (text.length <= MAX_MESSAGE_LENGTH) return undefined;
  return refusal(
    say('discord.messageTooLong', { count: text.length, most: String(MAX_MESSAGE_LENGTH) }),
    say('discord.copyThePart'),
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
  const asked = choices === '' ? [] : [{ label: say('discord.buttonsForWriter'), value: choices }];
  const apart = { label: say('discord.workedOut'), value: say('discord.fromMessageAlone') };
  const why =
    place === undefined || hindered === undefined
      ? []
      : [{ label: say('discord.canNotBePosted'), value: hindered }];
  return { ...given, notes: [...asked, apart, ...why], next: [] };
}
