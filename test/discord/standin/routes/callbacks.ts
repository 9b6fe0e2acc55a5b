import { announce } from '../announce.ts';
import { checkCallback } from '../check-callback.ts';
import type { Callback, Interaction } from '../interaction.ts';
import { type Json, record, text, whole } from '../json.ts';
import { flag, time } from '../limits.ts';
import { changeMessage, sentOf, storeMessage } from '../message.ts';
import { callbackData } from '../multipart.ts';
import { userIds } from '../world.ts';
import { bodyOf, type Call, checked, nothing, ok, param, refuse, type Reply, type Route } from './route.ts';

/** The first answer to an interaction. */
export const callbackRoutes: readonly Route[] = [
  {
    method: 'POST',
    pattern: '/interactions/:interaction/:token/callback',
    open: true,
    handle: (call) => {
      const found = call.state.interactions.get(param(call, 'token'));
      if (found?.id !== param(call, 'interaction')) return refuse(404, 10062, 'Unknown interaction');
      return respond(call, found);
    },
  },
];

function respond(call: Call, interaction: Interaction): Reply {
  const elapsedMs = call.state.nowMs() - interaction.deliveredMs;
  const refused = refusal(call, interaction, elapsedMs);
  const callback: Callback = {
    type: whole(bodyOf(call)['type']),
    body: bodyOf(call),
    files: call.files,
    elapsedMs,
    status: refused?.status ?? 200,
    code: whole(record(refused?.body)['code']),
  };
  interaction.callbacks.push(callback);
  if (refused) return refused;
  interaction.accepted = callback;
  show(call, interaction, callback);
  return call.query.get('with_response') === 'true' ? ok(resource(interaction, callback)) : nothing;
}

function refusal(call: Call, interaction: Interaction, elapsedMs: number): Reply | undefined {
  if (interaction.accepted) return refuse(400, 40060, 'Interaction has already been acknowledged.');
  const over = interaction.late || elapsedMs > time.firstResponseMs;
  if (over) return refuse(404, 10062, 'Unknown interaction');
  return checked(call, (here) => checkCallback(here, bodyOf(call), interaction, call.files));
}

function show(call: Call, interaction: Interaction, { type, body, files }: Callback): void {
  const { state } = call;
  const data = callbackData(body);
  const channelId = text(interaction.payload['channel_id']);
  if (type === 4 || type === 5) {
    const flags = whole(data['flags']) | (type === 5 ? flag.loading : 0);
    const extra = interactionExtra(interaction);
    const author = state.world.users.get(userIds.bot) ?? {};
    interaction.original = storeMessage(state, { channelId, author, body: data, files, flags, extra });
    announce(state, interaction.original, 'MESSAGE_CREATE');
    if (type === 4) interaction.reply = sentOf(state, interaction.original, data, files);
  } else if ((type === 6 || type === 7) && interaction.source) {
    interaction.original = interaction.source;
    if (type === 6) return;
    changeMessage(state, interaction.source, data, files);
    announce(state, interaction.source, 'MESSAGE_UPDATE');
    interaction.reply = sentOf(state, interaction.source, data, files);
  }
}

/** The fields a message has because an interaction made it. */
export function interactionExtra(interaction: Interaction): Json {
  const member = record(interaction.payload['member']);
  const user = member['user'] ?? interaction.payload['user'];
  return {
    type: interaction.type === 2 ? 20 : 0,
    application_id: userIds.bot,
    webhook_id: userIds.bot,
    interaction_metadata: {
      id: interaction.id,
      type: interaction.type,
      user,
      authorizing_integration_owners: {},
    },
  };
}

function resource(interaction: Interaction, { type }: Callback): Json {
  const made = interaction.original;
  const flags = whole(made?.wire['flags']);
  return {
    interaction: {
      id: interaction.id,
      type: interaction.type,
      ...(made && { response_message_id: made.id }),
      ...(made && { response_message_loading: (flags & flag.loading) !== 0 }),
      ...(made && { response_message_ephemeral: (flags & flag.ephemeral) !== 0 }),
    },
    resource: { type, ...(made && { message: made.wire }) },
  };
}
