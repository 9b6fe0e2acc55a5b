import { isDeepStrictEqual } from 'node:util';
import { Routes } from 'discord.js';
import type { APIApplication, REST } from 'discord.js';
import type { Definition, MenuDefinition } from './definition.ts';

/** Every server, or one server by its id. */
export type Scope = { readonly guild: string } | 'global';

/** Names of commands, by what a registration would do or did to them. */
export interface Change {
  readonly added: readonly string[];
  readonly changed: readonly string[];
  readonly removed: readonly string[];
  readonly unchanged: readonly string[];
}

/** Compares what is registered with `wanted`, and writes `wanted` only if something differs and `dry` is false. */
export async function register(
  rest: REST,
  wanted: readonly (Definition | MenuDefinition)[],
  scope: Scope,
  dry: boolean,
): Promise<Change> {
  const application = (await rest.get(Routes.currentApplication())) as APIApplication;
  const route =
    scope === 'global'
      ? Routes.applicationCommands(application.id)
      : Routes.applicationGuildCommands(application.id, scope.guild);
  const registered = (await rest.get(route)) as readonly object[];
  const change = compare(registered, wanted, scope);
  const differs = change.added.length + change.changed.length + change.removed.length > 0;
  if (differs && !dry) await rest.put(route, { body: wanted.map((each) => within(each, scope)) });
  return change;
}

/** Where a command can be used is said of a global one only. */
function within(wanted: Definition | MenuDefinition, scope: Scope): object {
  if (scope === 'global') return wanted;
  return Object.fromEntries(Object.entries(wanted).filter(([key]) => !globalOnly.has(key)));
}

const globalOnly: ReadonlySet<string> = new Set(['contexts', 'integration_types']);

/** Compares two lists of definitions by name, blind to what Discord adds and to defaults left out. */
export function compare(registered: readonly object[], wanted: readonly object[], scope: Scope): Change {
  const [before, after] = [byName(registered, scope), byName(wanted, scope)];
  const kept = [...after.keys()].filter((name) => before.has(name));
  const same = (name: string): boolean => isDeepStrictEqual(before.get(name), after.get(name));
  return {
    added: [...after.keys()].filter((name) => !before.has(name)),
    changed: kept.filter((name) => !same(name)),
    removed: [...before.keys()].filter((name) => !after.has(name)),
    unchanged: kept.filter(same),
  };
}

const everywhere = ['type', 'name', 'description', 'options', 'default_member_permissions'] as const;

function byName(list: readonly object[], scope: Scope): ReadonlyMap<string, unknown> {
  const keys = scope === 'global' ? [...everywhere, ...globalOnly] : everywhere;
  return new Map(
    list.map((each) => {
      const fields = new Map(Object.entries(each));
      const picked = Object.fromEntries(keys.map((key) => [key, fields.get(key)]));
      return [String(fields.get('name')), plain(picked)];
    }),
  );
}

/** Leaves out null, false, empty texts and empty lists, which mean the same as nothing here; numbers in lists are a set. */
function plain(value: unknown): unknown {
  if (Array.isArray(value)) {
    const items: readonly unknown[] = value;
    return items.every((item) => typeof item === 'number') ? [...items].sort() : items.map(plain);
  }
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, each]) => !saysNothing(each))
      .map(([key, each]) => [key, plain(each)]),
  );
}

function saysNothing(value: unknown): boolean {
  return (
    value === undefined ||
    value === null ||
    value === false ||
    value === '' ||
    (Array.isArray(value) && value.length === 0)
  );
}
