/** A typed line with one of its options replaced, or put behind. */
export function withOption(line: string, name: string, value: string): string {
  const given = new RegExp(String.raw`\b${name}:.*?(?= \w[\w-]*:|$)`);
  return given.test(line) ? line.replace(given, () => `${name}:${value}`) : `${line} ${name}:${value}`;
}
