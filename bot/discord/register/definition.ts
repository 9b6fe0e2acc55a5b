import {
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ApplicationIntegrationType,
  InteractionContextType,
  PermissionFlagsBits,
} from 'discord.js';
import type {
  APIApplicationCommandBasicOption,
  APIApplicationCommandSubcommandOption,
  RESTPostAPIChatInputApplicationCommandsJSONBody,
  RESTPostAPIContextMenuApplicationCommandsJSONBody,
} from 'discord.js';
import type { Command } from '../../../commands/command.ts';
import { subjects } from '../../../commands/help/subjects.ts';
import { optionsOf } from '../../../commands/options.ts';
import type { Option } from '../../../commands/options.ts';
import { channelTypes } from '../channel-types.ts';
import type { Menu } from '../menu/menus.ts';

export type Definition = RESTPostAPIChatInputApplicationCommandsJSONBody;
export type MenuDefinition = RESTPostAPIContextMenuApplicationCommandsJSONBody;

const mostChoices = 25;
const longestDescription = 100;

const everyone = {
  contexts: [
    InteractionContextType.Guild,
    InteractionContextType.BotDM,
    InteractionContextType.PrivateChannel,
  ],
  integration_types: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
};
const managersOnly = {
  contexts: [InteractionContextType.Guild],
  integration_types: [ApplicationIntegrationType.GuildInstall],
  default_member_permissions: String(PermissionFlagsBits.ManageGuild),
};

/**
 * The commands as Discord wants them registered: one definition for each first word of a path, second words as
 * subcommands, for use in servers that have the bot, in direct messages with it, and as a member's own app anywhere else;
 * what is for managers only in their server.
 *
 * @throws Error when two commands cannot live side by side or a description is too long: a defect of the commands.
 */
export function definitions(commands: readonly Command[]): readonly Definition[] {
  const names = new Set(commands.map((command) => command.path[0]));
  return [...names].map((name) =>
    definition(
      name,
      commands.filter((command) => command.path[0] === name),
    ),
  );
}

/** What can be chosen on a message, as Discord wants it registered. */
export function menuDefinitions(menus: readonly Pick<Menu, 'name'>[]): readonly MenuDefinition[] {
  return menus.map(({ name }) => ({
    type: ApplicationCommandType.Message,
    name,
    ...everyone,
  }));
}

function definition(name: string, members: readonly Command[]): Definition {
  const plain = members.find((command) => command.path.length === 1);
  const seconds = new Set(members.map((command) => command.path[1]));
  if (seconds.size < members.length || (plain !== undefined && members.length > 1)) {
    throw new Error(`/${name} holds a name twice, or has both options and subcommands`);
  }
  const managers = members.filter((command) => command.managers).length;
  if (managers !== 0 && managers !== members.length) {
    throw new Error(`/${name} is in part for managers only`);
  }
  return {
    type: ApplicationCommandType.ChatInput,
    name,
    ...(plain === undefined
      ? {
          description: described(name, subjects[name] ?? `All about ${name}`),
          options: members.map(subcommand),
        }
      : { description: described(name, plain.summary), options: optionsOf(plain.options).map(basic) }),
    ...(managers === 0 ? everyone : managersOnly),
  };
}

function subcommand(command: Command): APIApplicationCommandSubcommandOption {
  const [parent, name = parent] = command.path;
  return {
    type: ApplicationCommandOptionType.Subcommand,
    name,
    description: described(`${parent} ${name}`, command.summary),
    options: optionsOf(command.options).map(basic),
  };
}

function basic(option: Option): APIApplicationCommandBasicOption {
  const { name, required } = option;
  const common = { name, required, description: described(name, option.description) };
  const limits = {
    ...(option.min === undefined ? {} : { min_value: option.min }),
    ...(option.max === undefined ? {} : { max_value: option.max }),
  };
  if (option.kind === 'boolean') return { ...common, type: ApplicationCommandOptionType.Boolean };
  if (option.kind === 'member') return { ...common, type: ApplicationCommandOptionType.User };
  if (option.kind === 'role') return { ...common, type: ApplicationCommandOptionType.Role };
  if (option.kind === 'channel') {
    return { ...common, type: ApplicationCommandOptionType.Channel, channel_types: [...channelTypes] };
  }
  if (option.kind === 'file') {
    const types = option.fileTypes === undefined ? {} : { file_types: [...option.fileTypes] };
    return { ...common, ...types, type: ApplicationCommandOptionType.Attachment };
  }
  if (option.kind === 'integer') return { ...common, ...limits, type: ApplicationCommandOptionType.Integer };
  if (option.kind === 'number') return { ...common, ...limits, type: ApplicationCommandOptionType.Number };
  const length = option.maxLength === undefined ? {} : { max_length: option.maxLength };
  return { ...common, ...length, ...offered(option), type: ApplicationCommandOptionType.String };
}

function offered(option: Option) {
  const { choices } = option;
  if (choices !== undefined && choices.length <= mostChoices) {
    return { choices: choices.map((value) => ({ name: value, value })) };
  }
  return choices === undefined && option.suggest === undefined ? {} : { autocomplete: true as const };
}

function described(name: string, text: string): string {
  if (text.length <= longestDescription) return text;
  throw new Error(`the description of ${name} has ${text.length} characters`);
}
