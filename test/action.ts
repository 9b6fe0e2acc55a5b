import type { NextAction } from '../commands/answer.ts';

interface AnyAction {
  readonly label: string;
  readonly command: string;
  readonly input: Readonly<Record<string, string>>;
  readonly ask?: readonly string[];
}

/** A button of a command that is not in the list: of a test, or of none. */
export function pretended(action: AnyAction): NextAction {
  return action as NextAction;
}

/** The options of a button, whichever command it runs. */
export function inputOf({ input }: NextAction): Readonly<Record<string, string>> {
  return input;
}
