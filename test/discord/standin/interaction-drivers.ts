import { filledForm, type FormFields } from './form-fields.ts';
import { everyComponent, selects } from './component.ts';
import { channelOf, deliver, type Delivery } from './deliver.ts';
import { type InteractionHandle, interactionHandle } from './interaction-handle.ts';
import { type Json, list, record, text, whole } from './json.ts';
import { flag } from './limits.ts';
import type { StoredMessage } from './message.ts';
import { fillOptions, type GivenOptions } from './slash-options.ts';
import type { State } from './state.ts';
import { guildId } from './world.ts';

export interface Slash extends Delivery {
  /** `add`, or `group add`. */
  readonly subcommand?: string;
}

export interface Pressing extends Delivery {
  /** The message that shows it; without it, the newest that does. */
  readonly messageId?: string;
  /** What was chosen in a menu. */
  readonly values?: readonly string[];
  /** The custom id that is sent in place of the button's own. */
  readonly forged?: string;
}

export interface InteractionDrivers {
  readonly slash: (command: string, options?: GivenOptions, how?: Slash) => InteractionHandle;
  readonly autocomplete: (
    command: string,
    options: GivenOptions,
    how: Slash & { readonly focused: string },
  ) => InteractionHandle;
  /** Presses a button or chooses in a menu the bot has shown; throws when it shows none or it is disabled. */
  readonly component: (customId: string, how?: Pressing) => InteractionHandle;
  /** Uses a context menu command on a message, where that stands, or on a person; throws when the message is gone. */
  readonly contextMenu: (
    command: string,
    target: { readonly user: string } | { readonly message: string },
    how?: Delivery,
  ) => InteractionHandle;
  /** Sends the form the bot opened in answer to `opened`. */
  readonly submitModal: (opened: InteractionHandle, fields: FormFields, how?: Delivery) => InteractionHandle;
}

export function interactionDrivers(state: State): InteractionDrivers {
  const send = (what: Parameters<typeof deliver>[1], how: Delivery): InteractionHandle =>
    interactionHandle(state, deliver(state, what, how));
  return {
    slash: (command, options = {}, how = {}) => {
      const data = commandData(state, command, options, how);
      return send({ type: 2, data }, how);
    },
    autocomplete: (command, options, how) => {
      const data = commandData(state, command, options, how, how.focused);
      return send({ type: 4, data }, how);
    },
    component: (customId, how = {}) => {
      const { stored, part } = findShown(state, customId, how);
      const chosen = selects.has(part['type']) ? { values: how.values ?? [] } : {};
      const data = {
        custom_id: how.forged ?? customId,
        component_type: part['type'],
        id: whole(part['id']),
        ...chosen,
      };
      return send({ type: 3, data, source: stored }, { channelId: stored.channelId, ...how });
    },
    contextMenu: (command, target, how = {}) => {
      const onUser = 'user' in target;
      const id = onUser ? target.user : target.message;
      const type = onUser ? 2 : 3;
      const found = registered(state, command, type);
      const data = { id: found?.['id'] ?? state.nextId(), name: command, type, target_id: id };
      if (onUser) {
        const resolved = { users: { [id]: state.world.users.get(id) } };
        return send({ type: 2, data: { ...data, resolved } }, how);
      }
      const stored = state.messages.get(id);
      if (!stored || stored.deleted) throw new Error('There is no such message');
      const resolved = { messages: { [id]: stored.wire } };
      return send({ type: 2, data: { ...data, resolved } }, { channelId: stored.channelId, ...how });
    },
    submitModal: (opened, fields, how = {}) => {
      const modal = record(record(opened.interaction.accepted?.body)['data']);
      const { components, resolved } = filledForm(state, modal, fields);
      const data = { custom_id: modal['custom_id'], components, ...resolved };
      const { source } = opened.interaction;
      return send({ type: 5, data, ...(source && { source }) }, how);
    },
  };
}

/** The registered command of this name; none when nothing at all is registered. */
function registered(state: State, name: string, type: number): Json | undefined {
  const all = [...(state.commands.get(guildId) ?? []), ...(state.commands.get('global') ?? [])];
  const found = all.find((each) => each['name'] === name && each['type'] === type);
  if (!found && all.length > 0) throw new Error(`No command "${name}" is registered`);
  return found;
}

function commandData(state: State, name: string, given: GivenOptions, how: Slash, focused?: string): Json {
  const command = registered(state, name, 1);
  const path = how.subcommand?.split(' ') ?? [];
  let level = command;
  for (const part of path) {
    const child = level && list(level['options']).find((each) => record(each)['name'] === part);
    if (level && !child) throw new Error(`"${name}" has no subcommand "${part}"`);
    level = level && record(child);
  }
  const hasSubcommands = level && list(level['options']).some((each) => whole(record(each)['type']) < 3);
  if (hasSubcommands) throw new Error(`"${name}" needs a subcommand`);
  const filledIn = fillOptions(state, level, given, focused);
  let options = filledIn.options;
  path.toReversed().forEach((part, index) => {
    options = [{ name: part, type: index === 0 ? 1 : 2, options }];
  });
  const id = command?.['id'] ?? state.nextId();
  return { id, name, type: 1, options, resolved: filledIn.resolved };
}

function findShown(state: State, customId: string, how: Pressing): { stored: StoredMessage; part: Json } {
  const channelId = how.dm || how.channelId ? text(channelOf(state, how)['id']) : undefined;
  for (const stored of [...state.messages.values()].toReversed()) {
    if (stored.deleted || (how.messageId ?? stored.id) !== stored.id) continue;
    if (channelId !== undefined && stored.channelId !== channelId) continue;
    const part = everyComponent(stored.wire['components']).find((each) => each['custom_id'] === customId);
    if (!part || (whole(stored.wire['flags']) & flag.loading) !== 0) continue;
    if (part['disabled'] === true) throw new Error(`"${customId}" is disabled`);
    return { stored, part };
  }
  throw new Error(`No message shows "${customId}"`);
}

/** A part of a form with the values put in, as a submission carries it. */
