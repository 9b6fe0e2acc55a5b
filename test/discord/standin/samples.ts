import type { Json } from './json.ts';

/** Small valid pieces of payloads, to be spoilt in one way. */
export const chars = (count: number, letter = 'a'): string => letter.repeat(Math.max(0, count));
export const times = <T>(count: number, make: (index: number) => T): readonly T[] =>
  Array.from({ length: Math.max(0, count) }, (_, index) => make(index));

export const v2 = 1 << 15;
export const command = (more: Json = {}): Json => ({ name: 'probe', description: 'd', ...more });
export const option = (more: Json = {}): Json => ({ type: 3, name: 'word', description: 'd', ...more });
export const choice = (more: Json = {}): Json => ({ name: 'n', value: 'v', ...more });
export const words = (content: string): Json => ({ type: 10, content });
export const button = (more: Json = {}): Json => ({ type: 2, style: 1, label: 'b', custom_id: 'b', ...more });
export const row = (...components: readonly Json[]): Json => ({ type: 1, components });
export const pick = (more: Json = {}): Json => ({ label: 'l', value: 'v', ...more });
export const select = (more: Json = {}): Json => ({ type: 3, custom_id: 's', options: [pick()], ...more });
export const image = (more: Json = {}): Json => ({ media: { url: 'https://example.org/a.png' }, ...more });
export const gallery = (...items: readonly Json[]): Json => ({ type: 12, items });
export const section = (accessory: Json, ...components: readonly Json[]): Json => ({
  type: 9,
  accessory,
  components,
});
/** A message with the Components V2 flag. */
export const shown = (...components: readonly Json[]): Json => ({ flags: v2, components });
/** A message without it. */
export const plain = (...components: readonly Json[]): Json => ({ content: 'c', components });
export const embed = (more: Json): Json => ({ embeds: [more] });
export const input = (more: Json = {}): Json => ({ type: 4, custom_id: 'i', style: 1, ...more });
export const label = (component: Json, more: Json = {}): Json => ({
  type: 18,
  label: 'l',
  component,
  ...more,
});
export const form = (components: readonly Json[], more: Json = {}): Json => ({
  title: 't',
  custom_id: 'f',
  components,
  ...more,
});

/** A command whose names, descriptions and choice values have `size` characters together; 500 to 5004. */
export function commandOfText(size: number): Json {
  const rest = size - 4;
  const per = Math.ceil(rest / 25);
  const choices = times(25, (index) => {
    const mine = Math.min(per, rest - per * index);
    const name = String(index).padEnd(Math.floor(mine / 2), 'x');
    return { name, value: chars(mine - name.length, 'v') };
  }).filter((each) => each.value !== '');
  return { name: 'c', description: 'd', options: [{ type: 3, name: 'o', description: 'd', choices }] };
}
