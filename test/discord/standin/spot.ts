import { type RangeName, type Rule, ranges, snowflakePattern } from './limits.ts';
import { absent, type Json } from './json.ts';

/** One thing wrong with a payload: where, which rule, in words. */
export interface Issue {
  readonly path: readonly (string | number)[];
  readonly rule: Rule;
  readonly message: string;
}

/** A place inside a payload that checks report from. */
export interface Spot {
  readonly at: (...keys: (string | number)[]) => Spot;
  readonly fail: (rule: Rule, message: string) => void;
}

export function spot(issues: Issue[], path: Issue['path'] = []): Spot {
  return {
    at: (...keys) => spot(issues, [...path, ...keys]),
    fail: (rule, message) => void issues.push({ path, rule, message }),
  };
}

/** Fails unless `size` (a count, a number of characters or a plain number) lies in the named range. */
export function within(here: Spot, size: number, name: RangeName): void {
  const { min, max } = ranges[name];
  if (size < min || size > max) here.fail(name, `Must be between ${min} and ${max}; it is ${size}.`);
}

/** Text of a length in the named range; absent is allowed unless `required`. */
export function textWithin(here: Spot, value: unknown, name: RangeName, required = false): void {
  if (absent(value)) {
    if (required) here.fail(name, 'This field is required');
  } else if (typeof value !== 'string') here.fail('type', 'Must be a string');
  else within(here, value.length, name);
}

/** A whole number in the named range; absent is allowed. */
export function numberWithin(here: Spot, value: unknown, name: RangeName): void {
  if (absent(value)) return;
  if (typeof value === 'number' && Number.isInteger(value)) within(here, value, name);
  else here.fail('type', 'Must be a whole number');
}

/** The list at `key` (absent counts as empty), its length in the named range. */
export function listWithin(here: Spot, owner: Json, key: string, name: RangeName): readonly unknown[] {
  const value = owner[key];
  if (!absent(value) && !Array.isArray(value)) {
    here.at(key).fail('type', 'Must be a list');
    return [];
  }
  const items: readonly unknown[] = value ?? [];
  within(here.at(key), items.length, name);
  return items;
}

export function checkSnowflake(here: Spot, value: unknown): void {
  if (typeof value !== 'string' || !snowflakePattern.test(value)) {
    here.fail('snowflake', `Value "${String(value)}" is not snowflake.`);
  }
}

/** Discord's error body 50035 for these issues. */
export function invalidForm(issues: readonly Issue[]): Json {
  const errors: Record<string, unknown> = {};
  for (const { path, rule, message } of issues) {
    let node = errors;
    for (const key of path) node = (node[key] ??= {}) as Record<string, unknown>;
    const found = (node['_errors'] ??= []) as Json[];
    found.push({ code: rule.toUpperCase().replace('.', '_'), message });
  }
  return { code: 50035, message: 'Invalid Form Body', errors };
}
