import { ComponentType, TextInputStyle } from 'discord.js';
import type {
  APILabelComponent,
  APIModalInteractionResponseCallbackData,
  ModalSubmitInteraction,
} from 'discord.js';
import type { Command } from '../../../commands/command.ts';
import { optionsOf } from '../../../commands/options.ts';
import type { Option } from '../../../commands/options.ts';
import { Problem } from '../../../core/problem.ts';
import { mostAsked } from './call.ts';
import type { Call } from './call.ts';
import { shortened } from '../message/shortened.ts';
import { say } from '../../../core/wording/say.ts';

export type Form = APIModalInteractionResponseCallbackData;

/** What a member can write into a field; anything else has no place in a form. */
const writable: ReadonlySet<Option['kind']> = new Set(['string', 'number', 'integer']);
const longestTitle = 45;
const longestDescription = 100;
const oneLine = 200;
const mostWritten = 4000;

/**
 * The form that asks for what a call leaves open. It has the custom id of the button that opens it, which holds the call, so
 * it outlives a restart.
 *
 * @throws Problem for a call that no form of ours ever had.
 */
export function formOf(command: Command, call: Call, customId: string): Form {
  const asked = askedOptions(command, call.ask ?? []);
  if (asked === undefined) throw noForm();
  return {
    custom_id: customId,
    title: shortened(command.summary, longestTitle),
    components: asked.map((option) => label(option, call.input[option.name])),
  };
}

/** The call of a form with what was written into it; a field left empty is an option left out. */
export function filledCall({ command, input, ask = [] }: Call, { fields }: ModalSubmitInteraction): Call {
  const kept = Object.entries(input).filter(([name]) => !ask.includes(name));
  const written = ask.flatMap((name) => {
    const field = fields.fields.get(name);
    const value = field !== undefined && 'value' in field ? String(field.value ?? '').trim() : '';
    return value === '' ? [] : [[name, value] as const];
  });
  return { command, input: Object.fromEntries([...kept, ...written]), ask };
}

export function noForm(): Problem {
  return new Problem(say('discord.formGone'), {
    field: 'form',
    hint: say('discord.hintChooseCommand'),
  });
}

function askedOptions(command: Command, names: readonly string[]): readonly Option[] | undefined {
  const all = optionsOf(command.options);
  const found = names.flatMap((name) => all.filter((option) => option.name === name));
  const once = new Set(names).size === names.length && found.length === names.length;
  const fits = found.length > 0 && found.length <= mostAsked;
  return once && fits && found.every(({ kind }) => writable.has(kind)) ? found : undefined;
}

function label(option: Option, given: string | undefined): APILabelComponent {
  const { name, description, required, choices } = option;
  const most = Math.min(option.maxLength ?? oneLine, mostWritten);
  const placeholder = choices === undefined ? {} : { placeholder: shortened(choices.join(', '), 100) };
  return {
    type: ComponentType.Label,
    label: shortened(name, longestTitle),
    description: shortened(description, longestDescription),
    component: {
      type: ComponentType.TextInput,
      custom_id: name,
      style: most > oneLine ? TextInputStyle.Paragraph : TextInputStyle.Short,
      required,
      max_length: most,
      ...placeholder,
      ...(given === undefined || given.length > most ? {} : { value: given }),
    },
  };
}
