import { DiscordAPIError, InteractionResponseType, MessageFlags, RESTJSONErrorCodes } from 'discord.js';
import type { ButtonInteraction, ChatInputCommandInteraction } from 'discord.js';
import { localAnswer } from '../../commands/local-answer.ts';
import { localeInForce } from '../../core/wording/in-locale.ts';
import { logFailure } from '../log.ts';
import type { Logger } from '../log.ts';
import { isAlone } from './asked/place.ts';
import { holderFor } from './held/holder.ts';
import type { Whose } from './held/holder.ts';
import { callback, editAnswer, replyTo } from './callback.ts';
import type { Answerable, Target } from './callback.ts';
import type { Form } from './asked/form.ts';
import type { Desk, Outcome } from './outcome.ts';
import { failureAnswer } from './message/problem.ts';
import { render } from './message/render.ts';
import type { Rendered } from './message/container.ts';
import type { Drawn } from './message/drawn.ts';
import { holdsNothing } from './message/holder.ts';
import type { Holder } from './message/holder.ts';

type Ids = Readonly<Record<string, string>>;

/**
 * Shows that an answer is coming; false when Discord no longer takes one. What takes time comes after it: Discord gives
 * the first callback 3 seconds.
 */
export async function defer(log: Logger, interaction: Answerable, hidden: boolean): Promise<boolean> {
  try {
    const body = hidden ? { flags: MessageFlags.Ephemeral } : {};
    await callback(interaction, InteractionResponseType.DeferredChannelMessageWithSource, {
      body,
      files: [],
    });
    return true;
  } catch (error) {
    notDelivered(log, error, idsOf(interaction));
    return false;
  }
}

/** Answers an interaction: with one callback, or after a deferral where a picture or a file comes along. */
export async function reply(
  desk: Desk,
  interaction: Answerable,
  outcome: Outcome,
  hold = holderOf(desk, interaction, outcome),
): Promise<void> {
  const { hidden, answer } = outcome;
  const takesTime = answer.pictures !== undefined || answer.file !== undefined;
  if (!takesTime) {
    const send = (what: Rendered, privately = hidden): Promise<void> =>
      callback(
        interaction,
        InteractionResponseType.ChannelMessageWithSource,
        privately ? ephemeral(what) : what,
      );
    await deliver(desk.log, await drawn(desk, answer, hold), send, idsOf(interaction));
  } else if (await defer(desk.log, interaction, hidden)) {
    await replyDeferred(desk, interaction, outcome, hold);
  }
}

/** Puts an answer where a deferral announced one; who sees it was settled there. */
export async function replyDeferred(
  desk: Desk,
  interaction: Answerable,
  outcome: Outcome,
  hold = holderOf(desk, interaction, outcome),
): Promise<void> {
  const send = (what: Rendered): Promise<void> => editAnswer(interaction, what);
  await deliver(desk.log, await drawn(desk, outcome.answer, hold), send, idsOf(interaction));
}

/** Answers an interaction with what is drawn already, for the asker alone. */
export async function replyAlone(desk: Desk, interaction: Answerable, what: Rendered): Promise<void> {
  const send = (each: Rendered): Promise<void> =>
    callback(interaction, InteractionResponseType.ChannelMessageWithSource, ephemeral(each));
  await deliver(desk.log, what, send, idsOf(interaction));
}

/** Holds for who asked. */
export function holderOf(desk: Desk, interaction: Answerable, { hidden, leavesNoTrace }: Outcome): Holder {
  if (leavesNoTrace === true) return holdsNothing;
  return holderFor(desk, { personId: interaction.user.id, isPrivate: hidden || isAlone(interaction) });
}

/** Opens a form; only a command or a button can be answered with one. */
export async function openForm(
  desk: Desk,
  interaction: ButtonInteraction | ChatInputCommandInteraction,
  form: Form,
): Promise<void> {
  const body = { ...form };
  try {
    await callback(interaction, InteractionResponseType.Modal, { body, files: [] });
  } catch (error) {
    const errorId = notDelivered(desk.log, error, idsOf(interaction));
    if (wasRefused(error)) await reply(desk, interaction, { answer: failureAnswer(errorId), hidden: true });
  }
}

function ephemeral({ body, files }: Rendered): Rendered {
  return { body: { ...body, flags: body.flags | MessageFlags.Ephemeral }, files };
}

interface ReplyHow extends Whose {
  readonly pingsAuthor?: boolean;
  readonly leavesNoTrace?: boolean;
}

/**
 * Answers a message and tells the id of the reply; where the bot may not speak, only the log knows, and where it may not
 * attach files a picture is told in words. It pings nobody unless the writer of the message is to hear of it.
 */
export async function replyToMessage(
  desk: Desk,
  message: Target,
  answer: Drawn,
  { pingsAuthor = false, leavesNoTrace = false, ...whose }: ReplyHow,
): Promise<string | undefined> {
  const hold = leavesNoTrace ? holdsNothing : holderFor(desk, whose);
  const ids = { message: message.id, channel: message.channelId };
  let sentId: string | undefined;
  const send = async ({ body, files }: Rendered): Promise<void> => {
    const mentions = pingsAuthor ? { allowed_mentions: { parse: [], replied_user: true } } : {};
    sentId = await replyTo(message, { body: { ...body, ...mentions }, files });
  };
  const sendOrTell = (what: Rendered): Promise<void> =>
    send(what).catch((error: unknown) => {
      if (what.files.length === 0 || !mayNot(error)) throw error;
      return send(render(answer, hold));
    });
  await deliver(desk.log, await drawn(desk, answer, hold), sendOrTell, ids);
  return sentId;
}

/** Acknowledges a press that is answered already. */
export async function acknowledge(log: Logger, interaction: ButtonInteraction): Promise<void> {
  await callback(interaction, InteractionResponseType.DeferredMessageUpdate).catch((error: unknown) => {
    notDelivered(log, error, idsOf(interaction));
  });
}

/** Late, twice, forbidden, cut off: the member is told nothing more, the log is. */
export function notDelivered(log: Logger, error: unknown, ids: Ids): string {
  return logFailure(log, error, 'an answer was not delivered', ids);
}

/** The answer ready to send. A picture that cannot be drawn costs the picture, not the answer. */
export async function drawn({ log, toPng }: Desk, answer: Drawn, hold: Holder): Promise<Rendered> {
  try {
    const { pictures } = localAnswer(answer, localeInForce());
    if (pictures === undefined) return render(answer, hold);
    const draw = (svg: string) =>
      toPng(svg).catch((error: unknown) => void logFailure(log, error, 'a picture was not drawn'));
    const pngs = await Promise.all(pictures.map(async ({ svg }) => (await draw(svg)) ?? undefined));
    return render({ ...answer, pngs }, hold);
  } catch (error) {
    return render(failureAnswer(logFailure(log, error, 'an answer was not rendered')));
  }
}

const refusedForm: ReadonlySet<unknown> = new Set([
  RESTJSONErrorCodes.InvalidFormBodyOrContentType,
  RESTJSONErrorCodes.RequestEntityTooLarge,
]);

export async function deliver(
  log: Logger,
  rendered: Rendered,
  send: (what: Rendered, privately?: boolean) => Promise<void>,
  ids: Ids,
): Promise<void> {
  try {
    await send(rendered);
  } catch (error) {
    const errorId = notDelivered(log, error, ids);
    if (!wasRefused(error)) return;
    await send(render(failureAnswer(errorId)), true).catch((again: unknown) => notDelivered(log, again, ids));
  }
}

function wasRefused(error: unknown): boolean {
  return error instanceof DiscordAPIError && refusedForm.has(error.code);
}

function mayNot(error: unknown): boolean {
  return error instanceof DiscordAPIError && error.code === RESTJSONErrorCodes.MissingPermissions;
}

export function idsOf({ id, user }: Answerable): Ids {
  return { interaction: id, user: user.id };
}
