import { InteractionResponseType, Routes } from 'discord.js';
import type {
  AutocompleteInteraction,
  ButtonInteraction,
  ChatInputCommandInteraction,
  Message,
  MessageContextMenuCommandInteraction,
  ModalSubmitInteraction,
  RawFile,
  RESTPostAPIInteractionCallbackWithResponseResult,
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
 * Answers an interaction with its one callback; tells the id of the message that made where `tells` asks for it. Our payloads are wire JSON already, so they go straight to the REST
 * client of discord.js; its message builder would only copy them, key by key.
 */
export async function callback(
  { client, id, token }: Called,
  type: InteractionResponseType,
  { body, files }: Wire = { body: {}, files: [] },
  { tells = false } = {},
): Promise<string | undefined> {
  const route = Routes.interactionCallback(id, token);
  const query = tells ? { query: new URLSearchParams({ with_response: 'true' }) } : {};
  const sent = { body: { type, data: body }, files: [...files], auth: false, ...query };
  const made = await client.rest.post(route, sent);
  return tells ? (made as RESTPostAPIInteractionCallbackWithResponseResult).resource?.message?.id : undefined;
}

/** Puts the answer where the callback said that one is coming; the id of its message. */
export async function editAnswer(
  { client, applicationId, token }: Called,
  { body, files }: Wire,
): Promise<string> {
  const route = Routes.webhookMessage(applicationId, token);
  const sent = await client.rest.patch(route, { body, files: [...files], auth: false });
  return (sent as { readonly id: string }).id;
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
