import { ComponentType, TextInputStyle } from 'discord.js';
import type { APIComponentInLabel, APILabelComponent, ModalData, ModalSubmitInteraction } from 'discord.js';
import { writtenFor, type ReadingField } from '../../../commands/log/reading-fields.ts';
import type { Option } from '../../../commands/options.ts';
import { titleOf } from '../../../commands/titles.ts';
import { say } from '../../../core/wording/say.ts';
import { channelTypes } from '../channel-types.ts';
import { shortened } from '../message/shortened.ts';

/** Discord's documentation of modal components, from memory: label 45, description 100, radio 2 to 10, select 25. */
const longestLabel = 45;
const longestDescription = 100;
const fewestRadios = 2;
const mostRadios = 10;
const mostChoices = 25;
const oneLine = 200;
const mostWritten = 4000;

/** One field of a form: the option in words, its example below, and the input that fits it best. */
export function fieldOf(option: Option, given: string | undefined): APILabelComponent {
  return {
    type: ComponentType.Label,
    label: shortened(titleOf(option), longestLabel),
    description: shortened(option.description, longestDescription),
    component: inputOf(option, given),
  };
}

function inputOf(option: Option, given: string | undefined): APIComponentInLabel {
  const { name: custom_id, kind, required, choices = [] } = option;
  const common = { custom_id, required };
  const select = { ...common, min_values: required ? 1 : 0, max_values: 1 };
  if (kind === 'member') return { ...select, type: ComponentType.UserSelect };
  if (kind === 'role') return { ...select, type: ComponentType.RoleSelect };
  if (kind === 'channel')
    return { ...select, type: ComponentType.ChannelSelect, channel_types: [...channelTypes] };
  if (kind === 'file')
    return { ...select, type: ComponentType.FileUpload, file_types: [...(option.fileTypes ?? [])] };
  const chosen = given ?? (option.default === undefined ? undefined : String(option.default));
  if (kind === 'boolean')
    return { ...common, type: ComponentType.RadioGroup, options: yesOrNo(chosen, required) };
  if (choices.length >= fewestRadios && choices.length <= mostRadios)
    return { ...common, type: ComponentType.RadioGroup, options: choicesOf(choices, chosen) };
  if (choices.length > 0 && choices.length <= mostChoices)
    return { ...select, type: ComponentType.StringSelect, options: choicesOf(choices, chosen) };
  return written(option, given);
}

function choicesOf(choices: readonly string[], chosen: string | undefined) {
  return choices.map((value) => ({ value, label: value, default: value === chosen }));
}

function yesOrNo(chosen: string | undefined, required: boolean) {
  const isGiven = chosen !== undefined || !required;
  return [
    { value: 'true', label: say('discord.yes'), default: chosen === 'true' },
    { value: 'false', label: say('discord.no'), default: isGiven && chosen === 'false' },
  ];
}

function written(
  { name, required, maxLength = oneLine }: Option,
  given: string | undefined,
): APIComponentInLabel {
  const most = Math.min(maxLength, mostWritten);
  return {
    type: ComponentType.TextInput,
    custom_id: name,
    style: most > oneLine ? TextInputStyle.Paragraph : TextInputStyle.Short,
    required,
    max_length: most,
    ...(given === undefined || given.length > most ? {} : { value: given }),
  };
}

/** The fields of an option that is asked for value by value. */
export function readingFieldsOf(
  option: Option,
  fields: readonly ReadingField[],
  given: string | undefined,
): readonly APILabelComponent[] {
  return fields.map((field) => ({
    type: ComponentType.Label,
    label: shortened(field.label, longestLabel),
    component: written(
      { ...option, name: readingId(field), required: false, maxLength: oneLine },
      given === undefined ? undefined : writtenFor(field, given),
    ),
  }));
}

/** "reading.alkalinity": where a value of such an option is written. */
export function readingId({ parameter }: Pick<ReadingField, 'parameter'>): string {
  return `reading.${parameter}`;
}

/** What was written or chosen in a field, as text; empty where nothing was. */
export function valueIn({ fields }: Pick<ModalSubmitInteraction, 'fields'>, customId: string): string {
  return textOf(fields.fields.get(customId));
}

function textOf(field: ModalData | undefined): string {
  if (field === undefined) return '';
  if ('values' in field) return String(field.values[0] ?? '');
  return 'value' in field ? String(field.value ?? '').trim() : '';
}
