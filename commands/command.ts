import type { z } from 'zod';
import type { ChosenUnits } from '../core/quantity/chosen-units.ts';
import type { Reader } from '../core/language/reading.ts';
import { withNamedSources, type Answer } from './answer.ts';
import type { Talk } from './ask/talk.ts';
import type { Keep } from './keep.ts';
import { validate } from './options.ts';
import type { Server } from './server.ts';

/** What a run that others may read can know of the moment it runs in. Time comes in here; `core` never asks for it. */
export interface Context {
  readonly nowMs: number;
  /** IANA zone the asker's clock times are in; UTC where it is not known. */
  readonly zone?: string;
  /** BCP 47 tag of the asker's language and country, as "pt-BR"; undefined where it is not known. */
  readonly locale?: string;
  /** The units the asker chose for themselves, which no tank has to be known for. */
  readonly units?: ChosenUnits;
  /** Others read what is asked here. */
  readonly isShared?: true;
  /** The server it was asked in. */
  readonly server?: Server;
  /** What the asker is going through here. */
  readonly talk?: Talk;
  /** Reads plain words; every platform hands it over, made from the learnt weights at the first use. */
  readonly reader?: Reader;
}

/** The same for a run whose answer only the asker sees. */
export interface OwnContext extends Context {
  /** What the asker keeps here; undefined where nobody is known to ask. */
  readonly keep: Keep | undefined;
}

/** What a platform hands over with a call; how much of it a run gets is decided here. */
export interface Asking extends Context {
  readonly keep?: Keep | undefined;
}

/** A schema of options: an object of strings, numbers, booleans and enums, each with `.describe()`. */
export type OptionsSchema = z.ZodObject;

type Path = readonly [string] | readonly [string, string];
/** Options as they came in, not checked yet. */
export type RawInput = Readonly<Record<string, unknown>>;
type Raw<S extends OptionsSchema> = { readonly [K in keyof z.infer<S>]?: unknown };

/** One thing a member can ask for, named by its path: `['dose', 'amount']` or `['convert']`. */
export interface Command<P extends Path = Path, S extends OptionsSchema = OptionsSchema> {
  readonly path: P;
  /** At most 100 characters: it is the description on every platform. */
  readonly summary: string;
  /** One line that works as typed in the terminal room. */
  readonly example: string;
  /** Whether only the asker sees any of its answers. */
  readonly private: boolean;
  /** Whether its asker shows others what they keep by giving it. */
  readonly sharing: boolean;
  /** Only for those who may manage the server; elsewhere it is not offered. */
  readonly managers: boolean;
  readonly options: S;
  /** Whether the tank in use fills in what is left out of this input. */
  readonly fills: (input: RawInput) => boolean;
  /** Whether this input is answered from what the asker keeps, for the asker alone; known before it runs. */
  readonly isOwn: (input: RawInput, asking: Asking) => boolean;
  /** Whether it answers whatever is typed: what it cannot take it names in the answer (first aid). */
  readonly takesAnything?: true;
  /** Validates `input` against `options` and answers. Throws Problem for what the person can put right. */
  readonly run: (input: RawInput, asking: Asking) => Answer;
}

/** A command of this schema, whatever its name. */
export type CommandOf<S extends OptionsSchema> = Command<Path, S>;

interface Definition<P extends Path, S extends OptionsSchema> {
  readonly path: P;
  readonly summary: string;
  readonly example: string;
  readonly managers?: boolean;
  readonly options: S;
  readonly fills?: (input: Raw<S>) => boolean;
}

/** Everybody may read its answers, but for the inputs that are its asker's `own`: only their run sees what is kept. */
interface PublicDefinition<P extends Path, S extends OptionsSchema> extends Definition<P, S> {
  readonly private?: false;
  readonly sharing?: false;
  readonly run: (input: z.infer<S>, context: Context) => Answer;
  readonly own?: {
    readonly when: (input: Raw<S>, here: Here) => boolean;
    readonly run: (input: z.infer<S>, context: OwnContext) => Answer;
  };
}

interface PrivateDefinition<P extends Path, S extends OptionsSchema> extends Definition<P, S> {
  readonly private: true;
  readonly sharing?: false;
  readonly run: (input: z.infer<S>, context: OwnContext) => Answer;
}

/** Its asker shows others something of what they keep: the one way to do so, and on purpose. */
interface SharingDefinition<P extends Path, S extends OptionsSchema> extends Definition<P, S> {
  readonly private?: false;
  readonly sharing: true;
  readonly run: (input: z.infer<S>, context: OwnContext) => Answer;
}

/** Where it is asked: whether the asker has a tank in use, and whether others read it. */
interface Here {
  readonly hasTank: boolean;
  readonly isShared: boolean;
}

/**
 * Ties a schema to a `run` whose input has the schema's own type. Give `run` its return type: buttons know the options of
 * other commands (`calls.ts`), so the type of a command must not hang on what its answer holds.
 */
export function defineCommand<const P extends Path, S extends OptionsSchema>(
  definition: PublicDefinition<P, S> | PrivateDefinition<P, S> | SharingDefinition<P, S>,
): Command<P, S> {
  const { path, summary, example, options, managers = false, fills = () => true } = definition;
  const isOwn: Command['isOwn'] = (input, { keep, isShared = false }) => {
    if (definition.private === true) return true;
    if (definition.sharing === true || definition.own === undefined) return false;
    const here = { hasTank: keep?.tankInUse() !== undefined, isShared };
    return definition.own.when(input as Raw<S>, here);
  };
  return {
    path,
    summary,
    example,
    private: definition.private === true,
    sharing: definition.sharing === true,
    managers,
    options,
    fills: (input) => fills(input as Raw<S>),
    isOwn,
    run: (input, asking) => {
      const checked = validate(options, input);
      const own = { ...withoutKeep(asking), keep: asking.keep };
      const answered = (): Answer => {
        if (definition.private === true || definition.sharing === true) return definition.run(checked, own);
        if (definition.own !== undefined && isOwn(input, asking)) return definition.own.run(checked, own);
        return definition.run(checked, withoutKeep(asking));
      };
      return withNamedSources(answered());
    },
  };
}

/** All a public run gets: nothing else of what came in can reach it. */
export function withoutKeep({
  nowMs,
  zone,
  locale,
  units,
  isShared,
  server,
  talk,
  reader,
}: Context): Context {
  return {
    nowMs,
    ...(zone === undefined ? {} : { zone }),
    ...(locale === undefined ? {} : { locale }),
    ...(units === undefined ? {} : { units }),
    ...(isShared === undefined ? {} : { isShared }),
    ...(server === undefined ? {} : { server }),
    ...(talk === undefined ? {} : { talk }),
    ...(reader === undefined ? {} : { reader }),
  };
}

/** The reader of a context. @throws Error where a platform handed none over: a bug of ours. */
export function readerIn({ reader }: Context): Reader {
  if (reader === undefined) throw new Error('no reader of plain words in this context');
  return reader;
}
