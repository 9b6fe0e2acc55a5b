import { z } from 'zod';
import { Problem } from '../core/problem.ts';
import { oneMark } from '../core/quantity/marks.ts';
import type { QuantityKind } from '../core/quantity/unit.ts';
import { say } from '../core/wording/say.ts';

/** The lists that can be offered while a member types; `suggest.ts` fills them. */
export type SuggestionList =
  | 'parameter'
  | 'dosed'
  | 'mixed'
  | 'paced'
  | 'waste'
  | 'compound'
  | 'unit'
  | 'tank'
  | 'zone'
  | 'reminder'
  | 'coral'
  | 'placed'
  | 'command'
  | 'emergency';

/** Options whose value is the id of something on Discord; in the terminal the id is typed. */
export type IdKind = 'member' | 'channel' | 'role';

/** What the tank in use can fill in where an option is left out; `fill.ts` says with what. */
export type Fill = 'volume' | 'hours' | 'salinity' | 'temperature';

/** One option of a command as every platform sees it. */
export interface Option {
  readonly name: string;
  readonly kind: 'string' | 'number' | 'integer' | 'boolean' | 'file' | IdKind;
  readonly description: string;
  readonly required: boolean;
  readonly default?: string | number | boolean;
  readonly min?: number;
  readonly max?: number;
  /** Most characters a text may have. */
  readonly maxLength?: number;
  readonly choices?: readonly string[];
  readonly suggest?: SuggestionList;
  readonly quantity?: QuantityKind;
  readonly fill?: Fill;
  /** A form asks for it value by value: the readings of a test. */
  readonly fields?: 'readings';
  /** Left out, it is asked for first: by a form, or in the terminal by a question. */
  readonly isAsked?: boolean;
  /** Endings of the files it takes: ".csv". */
  readonly fileTypes?: readonly FileType[];
}

/** The ending of a file's name. */
export type FileType = `.${string}`;

/** The longest text an option takes. */
const MAX_TEXT = 200;

/** A text option; `suggest` names the list offered while typing. */
export function textOption(
  description: string,
  extra: {
    suggest?: SuggestionList;
    quantity?: QuantityKind;
    fill?: Fill;
    max?: number;
    fields?: 'readings';
    isAsked?: boolean;
  } = {},
): z.ZodString {
  const { max = MAX_TEXT, ...meta } = extra;
  return z
    .string()
    .trim()
    .min(1)
    .max(max)
    .meta({ description, ...meta });
}

/** A text option that holds a quantity, read later by `readQuantity`. */
export function quantityOption(kind: QuantityKind, description: string, fill?: Fill): z.ZodString {
  return textOption(description, {
    quantity: kind,
    suggest: 'unit',
    ...(fill === undefined ? {} : { fill }),
  });
}

/** The largest file taken, characters. */
export const MAX_FILE = 2_000_000;

/** A text file: an attachment on Discord, a path in the terminal. The platform reads it before the command runs. */
export function fileOption(description: string, fileTypes: readonly FileType[]) {
  const shape = { name: z.string().max(MAX_TEXT), text: z.string().max(MAX_FILE) };
  return z.strictObject(shape).meta({ description, file: true, fileTypes });
}

/** The id of a member, a channel or a role, picked from Discord's own list. */
export function idOption(kind: IdKind, description: string): z.ZodString {
  return z
    .string()
    .regex(/^\d{17,20}$/)
    .meta({ description, pick: kind });
}

/** Whether an option takes the id of something on Discord. */
export function isIdKind(kind: Option['kind']): kind is IdKind {
  return kind === 'member' || kind === 'channel' || kind === 'role';
}

interface JsonProperty {
  readonly type?: string;
  readonly description?: string;
  readonly default?: string | number | boolean;
  readonly enum?: readonly string[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly maxLength?: number;
  readonly suggest?: SuggestionList;
  readonly quantity?: QuantityKind;
  readonly fill?: Fill;
  readonly fields?: 'readings';
  readonly isAsked?: boolean;
  readonly file?: boolean;
  readonly fileTypes?: readonly FileType[];
  readonly pick?: IdKind;
}

const known = new WeakMap<z.ZodObject, readonly Option[]>();

/** The flat option list of a schema, required ones first; worked out once per schema. */
export function optionsOf(schema: z.ZodObject): readonly Option[] {
  const cached = known.get(schema);
  if (cached !== undefined) return cached;
  const json = z.toJSONSchema(schema, { io: 'input' });
  const required = new Set(json.required ?? []);
  const list = Object.entries(json.properties ?? {}).map(([name, property]) =>
    option(name, property as JsonProperty, required.has(name)),
  );
  const sorted = [...list.filter((o) => o.required), ...list.filter((o) => !o.required)];
  known.set(schema, sorted);
  return sorted;
}

function option(name: string, property: JsonProperty, required: boolean): Option {
  const { type, description, minimum, maximum, maxLength } = property;
  if (description === undefined) throw new Error(`option ${name} has no description`);
  if (property.file === true) {
    const { fileTypes = [] } = property;
    return { name, kind: 'file', description, required, fileTypes };
  }
  if (property.pick !== undefined) return { name, kind: property.pick, description, required };
  if (type !== 'string' && type !== 'number' && type !== 'integer' && type !== 'boolean') {
    throw new Error(`option ${name} is of type ${String(type)}`);
  }
  return {
    name,
    kind: type,
    description,
    required,
    ...(property.default === undefined ? {} : { default: property.default }),
    ...(minimum === undefined ? {} : { min: minimum }),
    ...(maximum === undefined ? {} : { max: maximum }),
    ...(maxLength === undefined ? {} : { maxLength }),
    ...(property.enum === undefined ? {} : { choices: property.enum }),
    ...(property.suggest === undefined ? {} : { suggest: property.suggest }),
    ...(property.quantity === undefined ? {} : { quantity: property.quantity }),
    ...(property.fill === undefined ? {} : { fill: property.fill }),
    ...(property.fields === undefined ? {} : { fields: property.fields }),
    ...(property.isAsked === undefined ? {} : { isAsked: property.isAsked }),
  };
}

/** The texts that begin with a number brought to one decimal mark: they are of one person and one moment. */
function withOneMark<T extends Readonly<Record<string, unknown>>>(input: T): T {
  const numeric = Object.entries(input).filter(
    (entry): entry is [string, string] => typeof entry[1] === 'string' && /^[\s+~<>=-]*\d/.test(entry[1]),
  );
  const marked = oneMark(numeric.map(([, text]) => text));
  return { ...input, ...Object.fromEntries(numeric.map(([name], index) => [name, marked[index]])) };
}

/**
 * Validates what a platform collected against the schema.
 *
 * @throws Problem naming the first option that is wrong, what was given and what is accepted.
 */
export function validate<S extends z.ZodObject>(
  schema: S,
  input: Readonly<Record<string, unknown>>,
): z.infer<S> {
  const result = schema.safeParse(input);
  if (result.success) return withOneMark(result.data);
  const [issue] = result.error.issues;
  if (issue === undefined) throw new Error('zod failed without an issue');
  const names = optionsOf(schema).map((o) => o.name);
  if (issue.code === 'unrecognized_keys') {
    const field = issue.keys[0] ?? '';
    throw new Problem(say('answer.thereNoOptionCalled', { field }), { field, limit: names.join(', ') });
  }
  const field = String(issue.path[0] ?? '');
  const given = input[field];
  if (given === undefined) {
    const description = optionsOf(schema).find((o) => o.name === field)?.description;
    throw new Problem(say('answer.missing', { field }), { field, hint: description });
  }
  const limit = limitOf(schema, field);
  throw new Problem(say('answer.iCannotTakeAs', { field }), {
    field,
    given: String(given).slice(0, MAX_TEXT),
    limit,
  });
}

function limitOf(schema: z.ZodObject, field: string): string | undefined {
  const found = optionsOf(schema).find((o) => o.name === field);
  if (found?.choices !== undefined) return found.choices.join(', ');
  if (found !== undefined && isIdKind(found.kind)) return `the id of a ${found.kind}: 17 to 20 digits`;
  if (found?.min !== undefined && found.max !== undefined) return `${found.min} to ${found.max}`;
  return found?.maxLength === undefined ? undefined : `at most ${found.maxLength} characters`;
}
