import { escapeWithin } from './escape.ts';

/** A titled list of plain lines; `put` adds the Markdown of its place in the list. */
export interface Section {
  readonly title: string;
  /** Sections are served by rank; those of rank `keptWhole` or less only get shorter lines, never fewer. */
  readonly rank: number;
  readonly lines: readonly string[];
  readonly put: (line: string, index: number) => string;
}

const mostCharacters = 4000;
const longestLine = 800;
const keptWhole = 1;
/** Room left for each later section to say at least its title and "and 12 more". */
const reserve = 40;

/** The written sections in their own order, together within Discord's limit; what has no room is counted. */
export function share(sections: readonly Section[]): readonly string[] {
  const filled = sections.filter((section) => section.lines.length > 0);
  const written = new Map<Section, string>();
  let room = mostCharacters - reserve * filled.length;
  for (const section of [...filled].sort((a, b) => a.rank - b.rank)) {
    room += reserve;
    const text = section.rank <= keptWhole ? whole(section, room) : first(section, room);
    written.set(section, text);
    room -= text.length;
  }
  return filled.map((section) => written.get(section) ?? '').filter((text) => text !== '');
}

function whole({ title, lines, put }: Section, room: number): string {
  const marks = [title, ...lines.map((_, index) => put('', index))].join('\n').length;
  const each = Math.min(longestLine, Math.floor((room - marks) / lines.length));
  return joined(
    title,
    lines.map((line, index) => put(escapeWithin(line, each), index)),
  );
}

function first({ title, lines, put }: Section, room: number): string {
  const all = lines.map((line, index) => put(escapeWithin(line, longestLine), index));
  if (joined(title, all).length <= room) return joined(title, all);
  for (let count = all.length - 1; count > 0; count -= 1) {
    const text = joined(title, [...all.slice(0, count), more(lines.length - count)]);
    if (text.length <= room) return text;
  }
  const none = joined(title, [more(lines.length)]);
  return none.length <= room ? none : '';
}

function more(count: number): string {
  return `-# and ${count} more`;
}

function joined(title: string, lines: readonly string[]): string {
  return [...(title === '' ? [] : [title]), ...lines].join('\n');
}
