import { announce } from '../announce.ts';
import { beforeEdit } from '../before-edit.ts';
import { checkMessage } from '../check-message.ts';
import type { Interaction } from '../interaction.ts';
import { time } from '../limits.ts';
import { changeMessage, sentOf, type StoredMessage, storeMessage } from '../message.ts';
import { text } from '../json.ts';
import { applicationId, userIds } from '../world.ts';
import { interactionExtra } from './callbacks.ts';
import { bodyOf, type Call, checked, nothing, ok, param, refuse, type Reply, type Route } from './route.ts';

const one = '/webhooks/:app/:token/messages/:message';

/** What follows the first answer: edits, follow-ups, deletes, for as long as the interaction token lives. */
export const webhookRoutes: readonly Route[] = [
  { method: 'POST', pattern: '/webhooks/:app/:token', open: true, handle: (call) => inTime(call, followUp) },
  { method: 'GET', pattern: one, open: true, handle: (call) => onMessage(call, (stored) => ok(stored.wire)) },
  { method: 'PATCH', pattern: one, open: true, handle: (call) => onMessage(call, edit) },
  { method: 'DELETE', pattern: one, open: true, handle: (call) => onMessage(call, remove) },
];

function inTime(call: Call, act: (call: Call, interaction: Interaction) => Reply): Reply {
  const interaction = call.state.interactions.get(param(call, 'token'));
  const known = param(call, 'app') === applicationId && interaction?.accepted;
  if (!known || !interaction) return refuse(404, 10015, 'Unknown Webhook');
  const expired = call.state.nowMs() - interaction.deliveredMs > time.interactionTokenMs;
  return expired ? refuse(401, 50027, 'Invalid Webhook Token') : act(call, interaction);
}

type Act = (stored: StoredMessage, call: Call, interaction: Interaction) => Reply;

function onMessage(call: Call, act: Act): Reply {
  return inTime(call, (_call, interaction) => {
    const id = param(call, 'message');
    const owned = [
      interaction.original?.id,
      ...interaction.followUps.map((each) => text(each.message['id'])),
    ];
    const stored =
      id === '@original' ? interaction.original : owned.includes(id) && call.state.messages.get(id);
    if (!stored || stored.deleted) return refuse(404, 10008, 'Unknown Message');
    return act(stored, call, interaction);
  });
}

function followUp(call: Call, interaction: Interaction): Reply {
  const { state, files } = call;
  const body = bodyOf(call);
  const refused = checked(call, (here) => checkMessage(here, call.body, { way: 'reply', files }));
  if (refused) return refused;
  const channelId = text(interaction.payload['channel_id']);
  const author = state.world.users.get(userIds.bot) ?? {};
  const stored = storeMessage(state, {
    channelId,
    author,
    body,
    files,
    extra: interactionExtra(interaction),
  });
  announce(state, stored, 'MESSAGE_CREATE');
  interaction.followUps.push(sentOf(state, stored, body, files));
  return ok(stored.wire);
}

function edit(stored: StoredMessage, call: Call, interaction: Interaction): Reply {
  const { state, files } = call;
  const body = bodyOf(call);
  const refused = checked(call, (here) =>
    checkMessage(here, call.body, { way: 'edit', files, before: beforeEdit(stored) }),
  );
  if (refused) return refused;
  changeMessage(state, stored, body, files);
  announce(state, stored, 'MESSAGE_UPDATE');
  const sent = sentOf(state, stored, body, files);
  interaction.edits.push(sent);
  if (stored === interaction.original) interaction.reply ??= sent;
  return ok(stored.wire);
}

function remove(stored: StoredMessage): Reply {
  stored.deleted = true;
  return nothing;
}
