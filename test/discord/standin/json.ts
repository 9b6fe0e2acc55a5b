export type Json = Readonly<Record<string, unknown>>;

export function isRecord(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The value as an object, or an empty one. */
export function record(value: unknown): Json {
  return isRecord(value) ? value : {};
}

/** The value as a list, or an empty one. */
export function list(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

/** The value as text, or empty text. */
export function text(value: unknown): string {
  return typeof value === 'string' ? value : '';
}

/** The value as a whole number, or 0: for flags and types. */
export function whole(value: unknown): number {
  return typeof value === 'number' && Number.isInteger(value) ? value : 0;
}

/** Absent on the wire: Discord treats null as "not given" in optional fields. */
export function absent(value: unknown): value is undefined | null {
  return value === undefined || value === null;
}
