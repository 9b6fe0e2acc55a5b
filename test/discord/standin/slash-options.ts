import { absent, type Json, list, record, text, whole } from './json.ts';
import { upload } from './message.ts';
import type { State } from './state.ts';

export interface GivenFile {
  readonly name: string;
  readonly contentType: string;
  readonly data: Uint8Array;
}

/** What a member gives for one option. */
export type Given =
  | string
  | number
  | boolean
  | { readonly user: string }
  | { readonly channel: string }
  | { readonly role: string }
  | { readonly file: GivenFile };

export type GivenOptions = Readonly<Record<string, Given>>;

export interface Filled {
  readonly options: readonly Json[];
  readonly resolved: Record<string, Record<string, Json>>;
}

/**
 * The options as Discord would deliver them. `definition` is the registered command or subcommand; with it,
 * what Discord's own client would not let a member send throws. Without it, types follow from the values.
 */
export function fillOptions(
  state: State,
  definition: Json | undefined,
  given: GivenOptions,
  focused?: string,
): Filled {
  const defined = definition && list(definition['options']).map(record);
  const resolved: Filled['resolved'] = {};
  const options = Object.entries(given).map(([name, value]) => {
    const option = defined?.find((each) => each['name'] === name);
    if (defined && !option) throw new Error(`The command has no option "${name}"`);
    const sent = wireValue(state, value, resolved);
    if (name === focused) {
      const type = option ? option['type'] : sent.type;
      return { name, type, value: String(sent.value), focused: true };
    }
    if (option) checkGiven(option, sent.type, sent.value);
    return { name, type: option ? option['type'] : sent.type, value: sent.value };
  });
  const missing = defined?.find((each) => each['required'] === true && !(text(each['name']) in given));
  if (missing && focused === undefined) throw new Error(`Option "${text(missing['name'])}" is required`);
  return { options, resolved };
}

interface Wire {
  readonly type: number;
  readonly value: string | number | boolean;
}

function wireValue(state: State, value: Given, resolved: Filled['resolved']): Wire {
  if (typeof value === 'string') return { type: 3, value };
  if (typeof value === 'boolean') return { type: 5, value };
  if (typeof value === 'number') return { type: Number.isInteger(value) ? 4 : 10, value };
  if ('user' in value) {
    const { user, ...member } = state.world.member(value.user);
    const rights = state.world.rightsOf(value.user);
    put(resolved, 'users', value.user, record(user));
    put(resolved, 'members', value.user, { ...member, permissions: rights });
    return { type: 6, value: value.user };
  }
  if ('channel' in value) {
    put(resolved, 'channels', value.channel, withoutRights(record(state.world.channels.get(value.channel))));
    return { type: 7, value: value.channel };
  }
  if ('role' in value) {
    put(resolved, 'roles', value.role, record(state.world.roles().find((each) => each['id'] === value.role)));
    return { type: 8, value: value.role };
  }
  const attachment = upload(state, { field: '', ...value.file });
  const id = text(attachment['id']);
  put(resolved, 'attachments', id, attachment);
  return { type: 11, value: id };
}

/** A channel as interactions carry it: without what says who may do what in it. */
function withoutRights(channel: Json): Json {
  return Object.fromEntries(Object.entries(channel).filter(([key]) => key !== 'permission_overwrites'));
}

function put(resolved: Filled['resolved'], kind: string, id: string, value: Json): void {
  (resolved[kind] ??= {})[id] = value;
}

function checkGiven(option: Json, type: number, value: unknown): void {
  const name = text(option['name']);
  const wanted = whole(option['type']);
  const fits = wanted === type || (wanted === 10 && type === 4);
  if (!fits) throw new Error(`Option "${name}" takes type ${wanted}, not ${type}`);
  const choices = list(option['choices']).map((each) => record(each)['value']);
  if (choices.length > 0 && !choices.includes(value)) throw new Error(`"${name}" has no such choice`);
  const size = typeof value === 'string' ? value.length : value;
  const [low, high] = typeof value === 'string' ? ['min_length', 'max_length'] : ['min_value', 'max_value'];
  const outside =
    typeof size === 'number' &&
    ((!absent(option[low]) && size < Number(option[low])) ||
      (!absent(option[high]) && size > Number(option[high])));
  if (outside) throw new Error(`"${name}" is outside the limits of the command`);
}
