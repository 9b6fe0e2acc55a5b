import type { Listed } from './index.ts';

type NameOf<P> = P extends readonly [infer A extends string]
  ? A
  : P extends readonly [infer A extends string, infer B extends string]
    ? `${A} ${B}`
    : never;

/** The options of every command, by its name as it is typed after the slash. */
type Calls = { readonly [C in Listed as NameOf<C['path']>]: C['options']['shape'] };

export type CommandName = keyof Calls;
export type OptionName<N extends CommandName> = keyof Calls[N] & string;

/** Options as text, and nothing else: also where there are none. */
type Texts<N extends CommandName, Text> = [OptionName<N>] extends [never]
  ? { readonly [name: string]: never }
  : { readonly [K in OptionName<N>]?: Text };

/** A command with some of its options as text: a name of either that there is not does not compile. */
export interface TextCall<N extends CommandName = CommandName> {
  readonly command: N;
  readonly input: Texts<N, string>;
  /** Options the member fills in first: a form on Discord, one question a line in the terminal. At most 5. */
  readonly ask?: readonly OptionName<N>[];
}

/** A call with the words on its button. */
export interface Action<N extends CommandName> extends TextCall<N> {
  readonly label: string;
}

/** Writes one down, checked wherever it stands; what is undefined is left out. */
export function action<N extends CommandName>(
  label: string,
  command: N,
  input: Texts<N, string | undefined>,
  ask?: TextCall<N>['ask'],
): Action<N> {
  const given = Object.entries<string | undefined>(input).filter(([, text]) => text !== undefined);
  const texts = Object.fromEntries(given) as TextCall<N>['input'];
  return { label, command, input: texts, ...(ask === undefined ? {} : { ask }) };
}
