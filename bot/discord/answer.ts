import { DiscordAPIError, MessageFlags, RESTJSONErrorCodes } from 'discord.js';
import type {
  AutocompleteInteraction,
  ButtonInteraction,
  ChatInputCommandInteraction,
  CommandInteractionOption,
  Message,
} from 'discord.js';
import { optionsOf } from '../../commands/options.ts';
import { suggest } from '../../commands/suggest.ts';
import { Problem } from '../../core/problem.ts';
import { logFailure } from '../log.ts';
import type { Logger } from '../log.ts';
import { readCallId } from './call.ts';
import { findByName, run, runText, runWords } from './outcome.ts';
import type { Desk, Outcome } from './outcome.ts';
import { failureAnswer, problemAnswer } from './problem.ts';
import { render } from './render.ts';
import type { Rendered } from './render.ts';

const mostSuggestions = 25;
const longestSuggestion = 100;

/** Answers a slash command with one callback. */
export async function answerCommand(desk: Desk, interaction: ChatInputCommandInteraction): Promise<void> {
  const options = leaves(interaction.options.data);
  const values = Object.fromEntries(options.map(({ name, value }) => [name, value]));
  const input = Object.fromEntries(options.map(({ name, value }) => [name, String(value)]));
  await reply(desk.log, interaction, run(desk, { command: nameOf(interaction), input }, values));
}

/** Runs what a button holds, as the person who pressed it. */
export async function answerButton(desk: Desk, interaction: ButtonInteraction): Promise<void> {
  const call = readCallId(interaction.customId);
  const unknown = new Problem('This button no longer works.', {
    field: 'button',
    hint: 'Type / and choose the command.',
  });
  const outcome = call ? runText(desk, call) : { rendered: render(problemAnswer(unknown)), hidden: true };
  await reply(desk.log, interaction, outcome);
}

/** Offers complete values for the option being typed; an error offers none. */
export async function answerAutocomplete(desk: Desk, interaction: AutocompleteInteraction): Promise<void> {
  const ids = { interaction: interaction.id };
  try {
    const values = suggestions(desk, interaction).filter((value) => value.length <= longestSuggestion);
    await interaction.respond(values.slice(0, mostSuggestions).map((value) => ({ name: value, value })));
  } catch (error) {
    notDelivered(desk.log, error, ids);
  }
}

/** Answers a message in plain words; where the bot may not speak, only the log knows. */
export async function answerMessage(desk: Desk, message: Message, text: string): Promise<void> {
  const { rendered } = runWords(desk, text);
  const send = (what: Rendered) => message.reply({ ...what, failIfNotExists: false });
  await deliver(desk.log, rendered, send, { message: message.id, channel: message.channelId });
}

async function reply(
  log: Logger,
  interaction: ChatInputCommandInteraction | ButtonInteraction,
  { rendered, hidden }: Outcome,
): Promise<void> {
  const send = (what: Rendered, privately = hidden) =>
    interaction.reply({ ...what, flags: privately ? what.flags | MessageFlags.Ephemeral : what.flags });
  await deliver(log, rendered, send, { interaction: interaction.id, user: interaction.user.id });
}

async function deliver(
  log: Logger,
  rendered: Rendered,
  send: (what: Rendered, privately?: boolean) => Promise<unknown>,
  ids: Readonly<Record<string, string>>,
): Promise<void> {
  try {
    await send(rendered);
  } catch (error) {
    const errorId = notDelivered(log, error, ids);
    if (!(error instanceof DiscordAPIError) || error.code !== RESTJSONErrorCodes.InvalidFormBodyOrContentType)
      return;
    await send(render(failureAnswer(errorId)), true).catch((again: unknown) => notDelivered(log, again, ids));
  }
}

/** Late, twice, forbidden, cut off: the member is told nothing more, the log is. */
function notDelivered(log: Logger, error: unknown, ids: Readonly<Record<string, string>>): string {
  return logFailure(log, error, 'an answer was not delivered', ids);
}

function suggestions(desk: Desk, interaction: AutocompleteInteraction): readonly string[] {
  const { name, value } = interaction.options.getFocused(true);
  const command = findByName(desk, nameOf(interaction));
  const option = command && optionsOf(command.options).find((each) => each.name === name);
  return option === undefined ? [] : [...new Set(suggest(option, value))];
}

function nameOf(interaction: ChatInputCommandInteraction | AutocompleteInteraction): string {
  const subcommand = interaction.options.getSubcommand(false);
  return subcommand === null ? interaction.commandName : `${interaction.commandName} ${subcommand}`;
}

/** The options of a subcommand, or of a command without one. */
function leaves(data: readonly CommandInteractionOption[]): readonly CommandInteractionOption[] {
  return data.flatMap((option) => (option.options === undefined ? [option] : leaves(option.options)));
}
