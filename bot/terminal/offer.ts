import type { NextAction } from '../../commands/answer.ts';
import type { Command } from '../../commands/command.ts';
import { optionsOf, type Option } from '../../commands/options.ts';
import { Problem } from '../../core/problem.ts';
import { commandNamed, nameOf } from '../../commands/named.ts';
import { literally } from './plain.ts';
import { questionOf, type Question } from './question.ts';
import type { CommandLine, Line } from './read.ts';
import { markers, valueOf } from './values.ts';

/** What a number runs: a line already read, the text of one still to be read, or a form to be filled in first. */
export type Offer = Line | Question | string;

/** The line or form a next action stands for. A command or option that does not exist is a bug, not a Problem. */
export function actionOffer(action: NextAction, commands: readonly Command[]): CommandLine | Question {
  const command = commandNamed(action.command.replace(/^\//, ''), commands);
  if (command === undefined) throw new Error(`a next action names no command: ${action.command}`);
  const input = Object.entries(action.input).map(([name, text]) => [name, optionValue(command, name, text)]);
  const line = { kind: 'command', path: command.path, input: Object.fromEntries(input) } as const;
  return action.ask === undefined || action.ask.length === 0 ? line : questionOf(line, command, action.ask);
}

/** "yes", "go ahead": the one offer that takes a question back to its call, confirmed. */
export function confirmedOffer(typed: string, offers: readonly Offer[]): Offer | undefined {
  if (
    !/^(?:yes|yep|yeah|y|sure|go ahead|do it)(?:[ ,](?:please|really|i did|i do|it is|go ahead|do it))?[.! ]*$/i.test(
      typed.trim(),
    )
  )
    return undefined;
  const confirming = offers.filter(
    (offer) => typeof offer !== 'string' && offer.kind === 'command' && offer.input['sure'] === 'yes',
  );
  return confirming.length === 1 ? confirming[0] : undefined;
}

function optionValue(command: Command, name: string, text: string): unknown {
  const option = optionsOf(command.options).find((known) => known.name === name);
  if (option === undefined) throw new Error(`/${nameOf(command)} has no option ${name}`);
  return sureValue(option, text);
}

/** The value of a text of ours: one the option refuses is a bug, so not shown as a Problem. */
function sureValue(option: Option, text: string): unknown {
  try {
    return valueOf(option, text);
  } catch (cause) {
    throw cause instanceof Problem ? new Error(`${option.name} refuses ${text}`, { cause }) : cause;
  }
}

/** The command again with a Problem's choice as the value of its option; nothing where it has no such option. */
export function chosenInCommand(line: CommandLine, command: Command, problem: Problem): readonly Offer[] {
  const option = optionsOf(command.options).find(({ name }) => name === problem.field);
  if (option === undefined) return [];
  return problem.choices.map((choice) => ({
    ...line,
    input: { ...line.input, [option.name]: sureValue(option, choice) },
  }));
}

/** A command line that could not be read, with each choice in place of what was given for that option. */
export function chosenInText(text: string, problem: Problem, commands: readonly Command[]): readonly Offer[] {
  const { given, field } = problem;
  if (given === undefined) return [];
  const options = commands
    .flatMap(({ options: schema }) => optionsOf(schema))
    .filter(({ name }) => name === field);
  const from = markers(text, options.slice(0, 1))[0]?.valueStart ?? 0;
  const at = text.indexOf(given, from);
  if (at < 0) return [];
  return problem.choices.map((choice) => text.slice(0, at) + choice + text.slice(at + given.length));
}

/** Plain words again: a choice takes the place of what was given, or is added where it says what that is. */
export function chosenInWords(text: string, problem: Problem): readonly Offer[] {
  const given = problem.given ?? '';
  const found = new RegExp(String.raw`(?<![\p{L}\p{N}.,])${literally(given)}(?![\p{L}\p{N}])`, 'iu').exec(
    text,
  );
  return problem.choices.map((choice) => {
    const isAdded = given === '' || found === null || (/\d/.test(given) && !/\d/.test(choice));
    if (isAdded) return { kind: 'words', text: `${text} ${choice}` };
    return {
      kind: 'words',
      text: text.slice(0, found.index) + choice + text.slice(found.index + given.length),
    };
  });
}

/** A line as it would be typed. */
export function typedForm(offer: Offer): string {
  if (typeof offer === 'string') return offer;
  if (offer.kind === 'words') return offer.text;
  if (offer.kind === 'question') return typedForm(offer.line);
  if (offer.kind !== 'command') return `/${offer.kind}`;
  return [
    `/${nameOf(offer)}`,
    ...Object.entries(offer.input).map(([name, value]) => `${name}:${String(value)}`),
  ].join(' ');
}
