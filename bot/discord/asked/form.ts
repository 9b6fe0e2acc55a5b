import type { APIModalInteractionResponseCallbackData, Attachment, ModalSubmitInteraction } from 'discord.js';
import type { Command } from '../../../commands/command.ts';
import type { Keep } from '../../../commands/keep.ts';
import {
  fieldsFor,
  firstUnread,
  lineOfFields,
  readingFields,
  type ReadingField,
} from '../../../commands/log/reading-fields.ts';
import { optionsOf } from '../../../commands/options.ts';
import type { Option } from '../../../commands/options.ts';
import { nameOf } from '../../../commands/named.ts';
import { formTitle } from '../../../commands/titles.ts';
import { Problem } from '../../../core/problem.ts';
import { mostAsked } from './call.ts';
import type { Call } from './call.ts';
import { fieldOf, readingFieldsOf, readingId, valueIn } from './field.ts';
import { parameterIds, type ParameterId } from '../../../core/water/parameter.ts';
import { say } from '../../../core/wording/say.ts';

export type Form = APIModalInteractionResponseCallbackData;

const longestTitle = 45;

/** Whose form it is. */
export interface Asked {
  readonly command: Command;
  readonly keep: Keep;
}

/**
 * The form that asks for what a call leaves open. It has the custom id of the button that opens it, which holds the call, so
 * it outlives a restart.
 *
 * @throws Problem for a call that no form of ours ever had.
 */
export function formOf({ command, keep }: Asked, call: Call, customId: string): Form {
  const asked = askedOptions(command, call.ask ?? []);
  if (asked === undefined) throw noForm();
  const fields = asked.flatMap((option) => {
    const given = call.input[option.name];
    if (option.fields === undefined) return [fieldOf(option, given)];
    const room = mostAsked - asked.length + 1;
    return readingFieldsOf(option, readingFields({ keep }, call.input).slice(0, room), given);
  });
  return { custom_id: customId, title: titled(command), components: fields };
}

/** What the form is for; a summary too long for a title is the name of its command. */
function titled(command: Command): string {
  const words = formTitle(command);
  return words.length <= longestTitle ? words : `/${nameOf(command)}`;
}

/** What was written into a form. */
export interface Filled {
  /** A field left empty is an option left out. */
  readonly call: Call;
  readonly attachments: readonly (readonly [string, Attachment])[];
  /** Of the first field that cannot be read. */
  readonly problem: Problem | undefined;
}

/** @throws Problem for a call that no form of ours ever had. */
export function filledForm({ command, keep }: Asked, call: Call, form: ModalSubmitInteraction): Filled {
  const { input, ask = [] } = call;
  const asked = askedOptions(command, ask);
  if (asked === undefined) throw noForm();
  const kept = Object.entries(input).filter(([name]) => !ask.includes(name));
  const written = asked.flatMap((option) => {
    const value = option.fields === undefined ? valueIn(form, option.name) : readingsIn(keep, form);
    return value === '' || option.kind === 'file' ? [] : [[option.name, value] as const];
  });
  const isByValue = asked.some(({ fields }) => fields !== undefined);
  const fields = isByValue ? fieldsIn(form, keep) : [];
  const files = asked.filter(({ kind }) => kind === 'file');
  return {
    call: { command: call.command, input: Object.fromEntries([...kept, ...written]), ask },
    problem: firstUnread(fields, keep, (parameter) => readingIn(form, parameter)),
    attachments: files.flatMap(({ name }) => {
      const [file] = form.fields.getUploadedFiles(name)?.values() ?? [];
      return file === undefined ? [] : [[name, file] as const];
    }),
  };
}

function readingsIn(keep: Keep, form: ModalSubmitInteraction): string {
  return lineOfFields(fieldsIn(form, keep), (parameter) => readingIn(form, parameter));
}

/** Those the form had when it was opened: what is asked for may have changed since. */
function fieldsIn({ fields }: ModalSubmitInteraction, keep: Keep): readonly ReadingField[] {
  return fieldsFor(
    keep,
    parameterIds.filter((parameter) => fields.fields.has(readingId({ parameter }))),
  );
}

function readingIn(form: ModalSubmitInteraction, parameter: ParameterId): string {
  return valueIn(form, readingId({ parameter }));
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
  return once && fits ? found : undefined;
}
