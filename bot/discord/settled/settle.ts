import { ComponentType, InteractionResponseType, MessageFlags, Routes } from 'discord.js';
import type { ButtonInteraction, Message, ModalSubmitInteraction } from 'discord.js';
import { isAlone, isGuest } from '../asked/place.ts';
import { pressedOn } from '../asked/pressed.ts';
import { callback } from '../callback.ts';
import { escapeText } from '../message/escape.ts';
import type { Rendered } from '../message/container.ts';
import type { Desk, Outcome } from '../outcome.ts';
import { deliver, drawn, holderOf, idsOf, notDelivered, reply } from '../send.ts';
import { say } from '../../../core/wording/say.ts';
import { fits, labelOf, spent } from './spent.ts';

type Press = ButtonInteraction | ModalSubmitInteraction;

/**
 * Answers a press. Where it changed something that is the presser's own, the message it was pressed on loses the buttons
 * that do something and shows the outcome; before others only that it was pressed, with the outcome for the presser alone.
 */
export async function replyToPress(desk: Desk, press: Press, outcome: Outcome): Promise<void> {
  const { message } = press;
  const pressed = pressedOn(press, desk.askerOf);
  const isOwn = pressed?.isPrivate === true || pressed?.answers === press.user.id;
  const takesTime = outcome.answer.pictures !== undefined || outcome.answer.file !== undefined;
  if (message === null || outcome.isChanged !== true || !isOwn) return reply(desk, press, outcome);
  const isSeenByOthers = !isAlone(press) && pressed?.isPrivate !== true;
  if (isSeenByOthers) {
    await reply(desk, press, outcome);
    return markPressed(desk, press, message);
  }
  return takesTime ? reply(desk, press, outcome) : showOutcome(desk, press, message, outcome);
}

async function showOutcome(desk: Desk, press: Press, message: Message, outcome: Outcome): Promise<void> {
  const send = (what: Rendered): Promise<void> => {
    const body = { ...what.body, components: withOutcome(message, what, outcome), attachments: [] };
    return callback(press, InteractionResponseType.UpdateMessage, { body, files: [] });
  };
  const what = await drawn(desk, outcome.answer, holderOf(desk, press, outcome));
  await deliver(desk.log, what, send, idsOf(press));
}

/** The message as it was with the outcome below; the outcome alone where that is too much, or nothing may stay. */
function withOutcome(message: Message, { body }: Rendered, { leavesNoTrace }: Outcome) {
  const kept = leavesNoTrace === true ? undefined : spent(message);
  const both = [...(kept ?? []), ...body.components];
  return kept !== undefined && fits(both) ? both : body.components;
}

async function markPressed({ log }: Desk, press: Press, message: Message): Promise<void> {
  if (isGuest(press)) return;
  const kept = spent(message);
  const label = labelOf(message, press.customId);
  if (kept === undefined || label === undefined) return;
  const note = {
    type: ComponentType.TextDisplay,
    content: `-# ${say('discord.pressed', { button: escapeText(label) })}`,
  } as const;
  const components = fits([...kept, note]) ? [...kept, note] : kept;
  const body = { components, flags: MessageFlags.IsComponentsV2, allowed_mentions: { parse: [] } };
  const route = Routes.channelMessage(message.channelId, message.id);
  await press.client.rest.patch(route, { body }).catch((error: unknown) => {
    notDelivered(log, error, idsOf(press));
  });
}
