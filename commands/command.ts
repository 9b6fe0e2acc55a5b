import type { z } from 'zod';
import type { Answer } from './answer.ts';
import type { Talk } from './ask/talk.ts';
import type { Keep } from './keep.ts';
import { validate } from './options.ts';
import type { Server } from './server.ts';

/** What a command may know of the moment it runs in. Time comes in here; `core` never asks for it. */
export interface Context {
  readonly nowMs: number;
  /** IANA zone the asker's clock times are in; UTC where it is not known. */
  readonly zone?: string;
  /** What the asker keeps here; absent where nothing of theirs may be shown or touched. */
  readonly keep?: Keep;
  /** The server it was asked in. */
  readonly server?: Server;
  /** What the asker said here shortly before. */
  readonly talk?: Talk;
}

/** A schema of options: an object of strings, numbers, booleans and enums, each with `.describe()`. */
export type OptionsSchema = z.ZodObject;

/** One thing a member can ask for, named by its path: `['dose', 'amount']` or `['convert']`. */
export interface Command {
  readonly path: readonly [string] | readonly [string, string];
  /** At most 100 characters: it is the description on every platform. */
  readonly summary: string;
  /** One line that works as typed in the terminal room. */
  readonly example: string;
  /** Whether only the asker sees the answer; known before it runs. */
  readonly private: boolean;
  /** Only for those who may manage the server; elsewhere it is not offered. */
  readonly managers: boolean;
  readonly options: OptionsSchema;
  /** Whether it answers whatever is typed: what it cannot take it names in the answer (first aid). */
  readonly takesAnything?: true;
  /** Validates `input` against `options` and answers. Throws Problem for what the person can put right. */
  readonly run: (input: Readonly<Record<string, unknown>>, context: Context) => Answer;
}

/** Ties a schema to a `run` whose input has the schema's own type. */
export function defineCommand<S extends OptionsSchema>(definition: {
  path: Command['path'];
  summary: string;
  example: string;
  private?: boolean;
  managers?: boolean;
  options: S;
  run: (input: z.infer<S>, context: Context) => Answer;
}): Command {
  return {
    path: definition.path,
    summary: definition.summary,
    example: definition.example,
    private: definition.private ?? false,
    managers: definition.managers ?? false,
    options: definition.options,
    run: (input, context) => definition.run(validate(definition.options, input), context),
  };
}
