import { InteractionResponseType, Routes } from 'discord.js';
import type {
  AutocompleteInteraction,
  ButtonInteraction,
  ChatInputCommandInteraction,
  Message,
  MessageContextMenuCommandInteraction,
  ModalSubmitInteraction,
  RawFile,
} from 'discord.js';

export type Answerable =
  | ChatInputCommandInteraction
  | MessageContextMenuCommandInteraction
  | ButtonInteraction
  | ModalSubmitInteraction;
type Called = Answerable | AutocompleteInteraction;

/** A message or another reply in Discord's own JSON, with the files that go along. */
export interface Wire {
  readonly body: Readonly<Record<string, unknown>>;
  readonly files: readonly RawFile[];
}

/**
 * Answers an interaction with its one callback. Our payloads are wire JSON already, so they go straight to the REST
 * client of discord.js; its message builder would only copy them, key by key.
 */
export async function callback(
  { client, id, token }: Called,
  type: InteractionResponseType,
  { body, files }: Wire = { body: {}, files: [] },
): Promise<void> {
  const route = Routes.interactionCallback(id, token);
  await client.rest.post(route, { body: { type, data: body }, files: [...files], auth: false });
}

/** Puts the answer where the callback said that one is coming. */
export async function editAnswer(
  { client, applicationId, token }: Called,
  { body, files }: Wire,
): Promise<void> {
  const route = Routes.webhookMessage(applicationId, token);
  await client.rest.patch(route, { body, files: [...files], auth: false });
}

/** A message that is replied to. */
export type Target = Pick<Message, 'client' | 'channelId' | 'id'>;

/** Replies to a message, also when it has gone by then; the id of the reply. */
export async function replyTo({ client, channelId, id }: Target, { body, files }: Wire): Promise<string> {
  const reference = { message_reference: { message_id: id, fail_if_not_exists: false } };
  const sent = await client.rest.post(Routes.channelMessages(channelId), {
    body: { ...body, ...reference },
    files: [...files],
  });
  return (sent as { readonly id: string }).id;
}
