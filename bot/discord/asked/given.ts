import type {
  Attachment,
  AutocompleteInteraction,
  ChatInputCommandInteraction,
  CommandInteractionOption,
} from 'discord.js';
import type { Call } from './call.ts';

/** What a member gave with a slash command: the call as text, its values, and the files still to be fetched. */
export interface Given {
  readonly call: Call;
  readonly values: Readonly<Record<string, unknown>>;
  readonly attachments: readonly (readonly [string, Attachment])[];
}

export function givenWith(interaction: ChatInputCommandInteraction): Given {
  const options = leaves(interaction.options.data);
  const plain = options.filter(({ attachment }) => attachment === undefined);
  const input = Object.fromEntries(plain.map(({ name, value }) => [name, String(value)]));
  return {
    call: { command: nameOf(interaction), input },
    values: Object.fromEntries(plain.map(({ name, value }) => [name, value])),
    attachments: options.flatMap(({ name, attachment }) =>
      attachment === undefined ? [] : [[name, attachment] as const],
    ),
  };
}

/** The options that have a value while another is still typed, as text. */
export function filledIn(interaction: AutocompleteInteraction): Readonly<Record<string, string>> {
  const options = leaves(interaction.options.data);
  return Object.fromEntries(options.map(({ name, value }) => [name, String(value ?? '')]));
}

/** The path of the command: "dose amount". */
export function nameOf(interaction: ChatInputCommandInteraction | AutocompleteInteraction): string {
  const subcommand = interaction.options.getSubcommand(false);
  return subcommand === null ? interaction.commandName : `${interaction.commandName} ${subcommand}`;
}

/** The options of a subcommand, or of a command without one. */
function leaves(data: readonly CommandInteractionOption[]): readonly CommandInteractionOption[] {
  return data.flatMap((option) => (option.options === undefined ? [option] : leaves(option.options)));
}
