import { compile, type Child } from '../store/compiled.ts';

export type { Child };

/** How long to wait for a child in ms: long, as it only decides when to give up. */
export const patience = 60_000;

export interface Built {
  /** Starts `bot/main.ts` or `bot/discord/register/register.ts`, compiled, with these settings and no others. */
  readonly start: (source: string, args?: readonly string[], env?: NodeJS.ProcessEnv) => Child;
  readonly remove: () => void;
}

/** Compiles the bot as `npm run build` does, into a folder of its own beside the usual one. */
export function build(): Built {
  const { start, remove } = compile(['bot/main.ts', 'bot/discord/register/register.ts']);
  return {
    start: (source, args = [], env = {}) => start(source, args, { DISCORD_TOKEN: '', ...env }),
    remove,
  };
}
