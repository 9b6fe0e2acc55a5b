import { definitionOf } from '../../core/quantity/unit.ts';
import type { Option } from '../options.ts';

/** What an option takes, in sentences made from its schema. */
export function optionWords(option: Option): readonly string[] {
  const { choices, min, max } = option;
  return [
    sentence(option.description),
    ...(option.quantity === undefined ? [] : [`Units: ${unitsOf(option.quantity)}.`]),
    ...(choices === undefined ? [] : [`One of: ${choices.join(', ')}.`]),
    ...(option.kind === 'boolean' ? ['yes or no.'] : []),
    ...(option.kind === 'integer' ? ['A whole number.'] : []),
    ...(min === undefined ? [] : [`At least ${min}.`]),
    ...(max === undefined ? [] : [`At most ${max}.`]),
    ...(option.default === undefined ? [] : [`Default: ${String(option.default)}.`]),
  ];
}

function unitsOf(kind: NonNullable<Option['quantity']>): string {
  const symbols = definitionOf(kind).units.map(({ symbol }) => symbol);
  return [...new Set(symbols)].filter((symbol) => symbol !== '').join(', ');
}

function sentence(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
