import type {
  AutocompleteInteraction,
  ButtonInteraction,
  ChatInputCommandInteraction,
  Message,
  ModalSubmitInteraction,
} from 'discord.js';
import { askedFirst } from '../../commands/asked-first.ts';
import { commandNamed } from '../../commands/named.ts';
import { optionsOf } from '../../commands/options.ts';
import { suggest } from '../../commands/suggest.ts';
import { Problem } from '../../core/problem.ts';
import { callId, readCallId, typedInput } from './asked/call.ts';
import type { Call } from './asked/call.ts';
import { readHeldId, readLook } from './asked/held-id.ts';
import type { Answerable } from './callback.ts';
import { heldCall } from './held/find.ts';
import { holderFor } from './held/holder.ts';
import { answerLook } from './held/look.ts';
import { download } from './asked/download.ts';
import { filledForm, formOf, noForm } from './asked/form.ts';
import type { Asked, Filled } from './asked/form.ts';
import { filledIn, givenWith, nameOf } from './asked/given.ts';
import type { Given } from './asked/given.ts';
import { tooFast } from '../turns.ts';
import { say } from '../../core/wording/say.ts';
import { commandOf, failed, run, runText, runWords } from './outcome.ts';
import type { Asker, Desk, Outcome } from './outcome.ts';
import { defer, notDelivered, openForm, reply, replyDeferred, replyToMessage } from './send.ts';
import { replyToPress } from './settled/settle.ts';
import { pressedOn } from './asked/pressed.ts';
import { placeOf, placeOfMessage } from './asked/place.ts';
import { talkOfMessage } from './talking.ts';

const mostSuggestions = 25;
const longestSuggestion = 100;

/** Answers a slash command: with one callback, unless files come with it or go back. */
export async function answerCommand(desk: Desk, interaction: ChatInputCommandInteraction): Promise<void> {
  const given = givenWith(interaction);
  const asker = askerOf(desk, interaction);
  const asking = askingFirst(desk, given.call);
  if (asking !== undefined && given.attachments.length === 0) return showForm(desk, interaction, asking);
  if (given.attachments.length === 0) {
    const { call, values } = given;
    return reply(desk, interaction, run(desk, { ...asker, command: call.command, values, call }));
  }
  if (await defer(desk.log, interaction, true)) {
    await replyDeferred(desk, interaction, { ...(await runWithFiles(desk, asker, given)), hidden: true });
  }
}

/** Runs what a button holds, as the person who pressed it, or opens its form; or shows more of its answer. */
export async function answerButton(desk: Desk, interaction: ButtonInteraction): Promise<void> {
  const look = readLook(interaction.customId);
  if (look !== undefined) return answerLook(desk, interaction, look);
  try {
    const call = callOf(desk, interaction);
    if (call.ask === undefined)
      await replyToPress(desk, interaction, runText(desk, askerOf(desk, interaction), call));
    else
      await openForm(desk, interaction, formOf(askedOf(desk, interaction, call), call, interaction.customId));
  } catch (error) {
    await reply(desk, interaction, failed(desk, error));
  }
}

/** A command called without what it asks for first, as a call that asks for it. */
function askingFirst(desk: Desk, call: Call): Call | undefined {
  const command = commandNamed(call.command, desk.commands);
  const ask = command === undefined ? [] : askedFirst(command, call.input);
  return ask.length === 0 ? undefined : { ...call, ask };
}

async function showForm(desk: Desk, interaction: ChatInputCommandInteraction, call: Call): Promise<void> {
  try {
    const hold = holderFor(desk, { personId: interaction.user.id, isPrivate: true });
    const id = callId(call, hold.call);
    if (id === undefined) throw noForm();
    await openForm(desk, interaction, formOf(askedOf(desk, interaction, call), call, id));
  } catch (error) {
    await reply(desk, interaction, failed(desk, error));
  }
}

/** Whose form a call opens. @throws Problem when there is no such command. */
function askedOf(desk: Desk, { user }: Answerable, { command }: Call): Asked {
  return { command: commandOf(desk, command), keep: desk.keepFor(user.id) };
}

/** Runs the call of a form with what was written into it, as the person who sent it; files are fetched first. */
export async function answerForm(desk: Desk, interaction: ModalSubmitInteraction): Promise<void> {
  let filled: Filled;
  try {
    const call = callOf(desk, interaction);
    if (call.ask === undefined) throw noButton();
    filled = filledForm(askedOf(desk, interaction, call), call, interaction);
  } catch (error) {
    return replyToPress(desk, interaction, failed(desk, error));
  }
  const asker = askerOf(desk, interaction);
  const { call, attachments, problem } = filled;
  if (problem !== undefined) return replyToPress(desk, interaction, failed(desk, problem, call));
  if (attachments.length === 0) return replyToPress(desk, interaction, runText(desk, asker, call));
  if (!(await defer(desk.log, interaction, true))) return;
  const values = typedInput(commandOf(desk, call.command), call.input);
  const outcome = await runWithFiles(desk, asker, { call, values, attachments });
  await replyDeferred(desk, interaction, { ...outcome, hidden: true });
}

/** The call of a button or a form: in its custom id, or held. @throws Problem where there is none (any more). */
function callOf(desk: Desk, { customId, user }: ButtonInteraction | ModalSubmitInteraction): Call {
  const id = readHeldId(customId);
  const call = id === undefined ? readCallId(customId) : heldCall(desk, id, user.id);
  if (call === undefined) throw noButton();
  return call;
}

function noButton(): Problem {
  return new Problem(say('discord.buttonGone'), {
    field: 'button',
    hint: say('discord.hintChooseCommand'),
  });
}

function askerOf(desk: Desk, interaction: Answerable): Asker {
  const pressed = pressedOn(interaction, desk.askerOf);
  const { id: askedId, user } = interaction;
  return { personId: user.id, place: placeOf(desk, interaction), askedId, pressed };
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
  const { author, reference } = message;
  const turn = desk.turnOf(author.id);
  if (turn === 'wait') return;
  const place = placeOfMessage(desk, message);
  const whose = { personId: author.id, isPrivate: place === undefined };
  if (turn === 'tell to wait') return void (await replyToMessage(desk, message, tooFast(), whose));
  const asker = place === undefined ? { personId: author.id } : { place, writerId: author.id };
  const where = { personId: author.id, place, isOwn: false };
  const talk = talkOfMessage(desk, where, reference?.messageId);
  const { answer, leavesNoTrace = false } = runWords(desk, text, { ...asker, talk });
  talk.askedAt(message.id);
  const sentId = await replyToMessage(desk, message, answer, { ...whose, leavesNoTrace });
  if (sentId !== undefined) talk.alsoAt(sentId);
}

/** Fetches the files of a deferred command first. */
async function runWithFiles(desk: Desk, asker: Asker, given: Given): Promise<Outcome> {
  const { command } = given.call;
  const options = optionsOf(commandOf(desk, command).options);
  const optionOf = (field: string) => options.find(({ name }) => name === field) ?? { name: field };
  try {
    const files = await Promise.all(
      given.attachments.map(
        async ([field, attachment]) => [field, await download(optionOf(field), attachment)] as const,
      ),
    );
    const values = { ...given.values, ...Object.fromEntries(files) };
    return run(desk, { ...asker, command, values, call: undefined });
  } catch (error) {
    return failed(desk, error);
  }
}

function suggestions(desk: Desk, interaction: AutocompleteInteraction): readonly string[] {
  const { name, value } = interaction.options.getFocused(true);
  const { [name]: _, ...input } = filledIn(interaction);
  const command = commandNamed(nameOf(interaction), desk.commands);
  const option = command && optionsOf(command.options).find((each) => each.name === name);
  if (option === undefined) return [];
  const { commands } = desk;
  const offered = { keep: desk.keepFor(interaction.user.id), commands, locale: interaction.locale, input };
  return [...new Set(suggest(option, value, offered))];
}
