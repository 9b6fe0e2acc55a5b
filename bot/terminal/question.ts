import type { Command } from '../../commands/command.ts';
import { optionsOf, type Option } from '../../commands/options.ts';
import { nameOf } from '../../commands/named.ts';
import { say } from '../../core/wording/say.ts';
import type { CommandLine } from './read.ts';
import { page } from './render.ts';
import { valueOf } from './values.ts';
import { wrap, type Style } from './wrap.ts';

/** A form half filled in: the command so far, and the options still to be asked for, the first of them now. */
export interface Question {
  readonly kind: 'question';
  readonly line: CommandLine;
  readonly open: readonly Option[];
}

/** What leaves out an option that may be left out. */
const NONE = '-';

/** The form over a command line. An option that does not exist is a bug, not a Problem. */
export function questionOf(line: CommandLine, command: Command, ask: readonly string[]): Question {
  const options = optionsOf(command.options);
  const open = ask.map((name) => {
    const option = options.find((known) => known.name === name);
    if (option === undefined) throw new Error(`/${nameOf(command)} has no option ${name}`);
    return option;
  });
  return { kind: 'question', line, open };
}

/** The form with what was typed as the value of the option asked for. @throws Problem with what is accepted. */
export function answeredWith(typed: string, { kind, line, open }: Question): Question {
  const [option, ...rest] = open;
  if (option === undefined || (typed === NONE && !option.required)) return { kind, line, open: rest };
  const input = { ...line.input, [option.name]: valueOf(option, typed) };
  return { kind, line: { ...line, input }, open: rest };
}

/** What is asked for, as it is shown. */
export function asking({ open: [option] }: Question, style: Style): string {
  if (option === undefined) return '';
  const { description, choices, required } = option;
  const oneOf = choices === undefined ? '' : ` (${choices.join(', ')})`;
  const text = `${description}${oneOf}`;
  const hint = required ? say('terminal.hintGivesUp') : say('terminal.hintLeavesOut', { mark: NONE });
  return page([...wrap(text, style.width), ...wrap(hint, style.width, '  ')]);
}
