/** Plain text of at most `most` characters, with "…" where something was left out; no character is cut in half. */
export function shortened(text: string, most: number): string {
  if (text.length <= most) return text;
  return `${text.slice(0, most - 1).replace(/[\ud800-\udbff]$/, '')}…`;
}
