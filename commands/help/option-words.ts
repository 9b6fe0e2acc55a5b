import { definitionOf } from '../../core/quantity/unit.ts';
import { say } from '../../core/wording/say.ts';
import type { Option } from '../options.ts';

/** What an option takes, in sentences made from its schema. */
export function optionWords(option: Option): readonly string[] {
  const { choices, min, max } = option;
  return [
    sentence(option.description),
    ...(option.quantity === undefined ? [] : [say('help.units', { units: unitsOf(option.quantity) })]),
    ...(choices === undefined ? [] : [say('help.oneOf', { choices: choices.join(', ') })]),
    ...(option.kind === 'boolean' ? [say('help.yesOrNo')] : []),
    ...(option.kind === 'integer' ? [say('help.wholeNumber')] : []),
    ...(min === undefined ? [] : [say('help.atLeast', { min: String(min) })]),
    ...(max === undefined ? [] : [say('help.atMost', { max: String(max) })]),
    ...(option.default === undefined ? [] : [say('help.default', { value: String(option.default) })]),
  ];
}

function unitsOf(kind: NonNullable<Option['quantity']>): string {
  const symbols = definitionOf(kind).units.map(({ symbol }) => symbol);
  return [...new Set(symbols)].filter((symbol) => symbol !== '').join(', ');
}

function sentence(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
