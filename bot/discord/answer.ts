import type {
  AutocompleteInteraction,
  ButtonInteraction,
  ChatInputCommandInteraction,
  Message,
} from 'discord.js';
import type { Answer } from '../../commands/answer.ts';
import { optionsOf } from '../../commands/options.ts';
import { suggest } from '../../commands/suggest.ts';
import { Problem } from '../../core/problem.ts';
import { readCallId } from './call.ts';
import { download } from './download.ts';
import { givenWith, nameOf } from './given.ts';
import type { Given } from './given.ts';
import { errorAnswer, findByName, run, runText, runWords } from './outcome.ts';
import type { Desk } from './outcome.ts';
import { problemAnswer } from './problem.ts';
import { defer, notDelivered, reply, replyDeferred, replyToMessage } from './send.ts';

const mostSuggestions = 25;
const longestSuggestion = 100;

/** Answers a slash command: with one callback, unless files come with it or go back. */
export async function answerCommand(desk: Desk, interaction: ChatInputCommandInteraction): Promise<void> {
  const given = givenWith(interaction);
  const personId = interaction.user.id;
  if (given.attachments.length === 0) return reply(desk, interaction, run(desk, { personId, ...given }));
  if (await defer(desk.log, interaction, true)) {
    await replyDeferred(desk, interaction, await runWithFiles(desk, personId, given));
  }
}

/** Runs what a button holds, as the person who pressed it. */
export async function answerButton(desk: Desk, interaction: ButtonInteraction): Promise<void> {
  const call = readCallId(interaction.customId);
  const unknown = new Problem('This button no longer works.', {
    field: 'button',
    hint: 'Type / and choose the command.',
  });
  const outcome = call
    ? runText(desk, interaction.user.id, call)
    : { answer: problemAnswer(unknown), hidden: true };
  await reply(desk, interaction, outcome);
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

/** Answers a message in plain words. Only a direct message may tell of its writer's tank. */
export async function answerMessage(desk: Desk, message: Message, text: string): Promise<void> {
  const { answer } = message.inGuild() ? runWords(desk, text) : runWords(desk, text, message.author.id);
  await replyToMessage(desk, message, answer);
}

/** Fetches the files of a deferred command first; its problems offer no buttons, as a button can hold no file. */
async function runWithFiles(desk: Desk, personId: string, given: Given): Promise<Answer> {
  const { command } = given.call;
  try {
    const files = await Promise.all(
      given.attachments.map(
        async ([field, attachment]) => [field, await download(field, attachment)] as const,
      ),
    );
    const values = { ...given.values, ...Object.fromEntries(files) };
    return run(desk, { personId, call: { command, input: {} }, values }).answer;
  } catch (error) {
    return errorAnswer(desk, error);
  }
}

function suggestions(desk: Desk, interaction: AutocompleteInteraction): readonly string[] {
  const { name, value } = interaction.options.getFocused(true);
  const command = findByName(desk, nameOf(interaction));
  const option = command && optionsOf(command.options).find((each) => each.name === name);
  if (option === undefined) return [];
  return [...new Set(suggest(option, value, desk.keepFor(interaction.user.id)))];
}
