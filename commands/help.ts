import { z } from 'zod';
import { Problem } from '../core/problem.ts';
import { say } from '../core/wording/say.ts';
import { answer, type Answer, type Fact } from './answer.ts';
import { action } from './calls.ts';
import { defineCommand, type Command } from './command.ts';
import { beginnings } from './help/beginnings.ts';
import { optionWords } from './help/option-words.ts';
import { subjects } from './help/subjects.ts';
import { commandNamed, commandsUnder, nameOf } from './named.ts';
import { nearest } from './nearest.ts';
import { optionsOf, textOption } from './options.ts';

/** `/help` over a list of commands, made from their schemas; it lists those for managers only to managers. */
export function helpCommand(commands: readonly Command[]) {
  return defineCommand({
    path: ['help'],
    summary: 'Where to begin, and a page for every command',
    example: '/help about:dose amount',
    private: true,
    options: z.strictObject({
      about: textOption('A command, such as "dose" or "dose amount"', { suggest: 'command' }).optional(),
    }),
    run: ({ about }, { server }): Answer => {
      const here = commands.filter(({ managers }) => !managers || server?.mayManage === true);
      const name = (about ?? '').replace(/^\//, '').trim().toLowerCase().replace(/\s+/g, ' ');
      if (name === '') return firstPage(here);
      const command = commandNamed(name, commands);
      if (command !== undefined) return commandPage(command);
      const under = commandsUnder(name, commands);
      if (under.length > 0) return subjectPage(name, under);
      throw unknown(about ?? '', name, here);
    },
  });
}

/** The first screen for a newcomer: three questions that work as typed, then what there is. */
export function firstPage(commands: readonly Command[]): Answer {
  const words = [...new Set(commands.map(({ path }) => path[0]))];
  return answer({
    headline: say('help.askOrChoose'),
    steps: [
      ...beginnings.map((question) => say('help.askForExample', { question })),
      say('help.toHelpSomeone'),
      say('help.someonesNumbers'),
    ],
    isList: true,
    facts: words.map((word): Fact => {
      const under = commandsUnder(word, commands);
      const seconds = under.flatMap(({ path }) => path.slice(1));
      const [only] = under;
      const value =
        seconds.length === 0 ? (only?.summary ?? '') : `${subjects[word] ?? ''}: ${seconds.join(', ')}`;
      return { label: `/${word}`, value };
    }),
    dangers: [say('help.urgentFirst')],
    next: beginnings.map((question, index) =>
      action(say('help.tryExample', { number: String(index + 1) }), 'ask', { question }),
    ),
  });
}

function subjectPage(word: string, under: readonly Command[]): Answer {
  return answer({
    headline: `/${word}: ${subjects[word] ?? under[0]?.summary ?? word}.`,
    isList: true,
    facts: under.map((command) => ({ label: `/${nameOf(command)}`, value: command.summary })),
    next: under.map((command) => action(nameOf(command), 'help', { about: nameOf(command) })),
  });
}

function commandPage(command: Command): Answer {
  const name = nameOf(command);
  const options = optionsOf(command.options);
  const seen = command.private ? [say('help.onlyYouSee')] : [];
  return answer({
    headline: `/${name}: ${command.summary}.`,
    read: seen,
    isList: true,
    facts: options.map((option) => ({
      label: option.required ? say('help.required', { option: option.name }) : option.name,
      value: optionWords(option)[0] ?? '',
    })),
    working: options.flatMap((option) => {
      const more = optionWords(option).slice(1);
      return more.length === 0 ? [] : [`${option.name}: ${more.join(' ')}`];
    }),
    steps: [say('help.forExample', { example: command.example })],
    next:
      command.path.length === 1
        ? []
        : [action(say('help.allOf', { subject: command.path[0] }), 'help', { about: command.path[0] })],
  });
}

function unknown(given: string, name: string, commands: readonly Command[]): Problem {
  const words = [...new Set(commands.flatMap((command) => [command.path[0], nameOf(command)]))];
  const near = nearest(name, words) ?? nearest(name.split(' ')[0] ?? '', words);
  return new Problem(say('help.noSuchCommand'), {
    field: 'about',
    given,
    hint: say('help.hintListsAll'),
    choices: near === undefined ? [] : [near],
  });
}
