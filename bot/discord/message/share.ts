import { say } from '../../../core/wording/say.ts';
import { escapeWithin } from './escape.ts';

/** A titled list of plain lines; `put` adds the Markdown of its place in the list. */
export interface Section {
  readonly title: string;
  /** Sections are served by rank; those of rank `keptWhole` or less only get shorter lines, never fewer. */
  readonly rank: number;
  readonly lines: readonly string[];
  readonly put: (line: string, index: number) => string;
  /** Markdown after a line, never shortened. */
  readonly tail?: (index: number) => string;
  /** The title and the lines are those of a code block, and already safe in one. */
  readonly block?: boolean;
  /** Stands apart from what is above it. */
  readonly isApart?: boolean;
}

export interface Shared {
  readonly text: string;
  readonly isApart: boolean;
}

const mostCharacters = 4000;
const longestLine = 800;
const keptWhole = 1;
/** Room left for each later section to say at least its title and "and 12 more". */
const reserve = 40;
const fence = '```';

/** The written sections in their own order, together within Discord's limit; what has no room is counted. */
export function share(sections: readonly Section[]): readonly Shared[] {
  const filled = sections.filter((section) => section.lines.length > 0);
  const written = new Map<Section, string>();
  let room = mostCharacters - reserve * filled.length;
  for (const section of [...filled].sort((a, b) => a.rank - b.rank)) {
    room += reserve;
    const text = section.rank <= keptWhole ? whole(section, room) : first(section, room);
    written.set(section, text);
    room -= text.length;
  }
  return filled
    .map((section) => ({ text: written.get(section) ?? '', isApart: section.isApart ?? false }))
    .filter(({ text }) => text !== '');
}

function whole(section: Section, room: number): string {
  const { lines, put } = section;
  const marks = joined(
    section,
    lines.map((_, index) => put('', index)),
  ).length;
  const each = Math.min(longestLine, Math.floor((room - marks) / lines.length));
  return joined(
    section,
    lines.map((line, index) => put(escapeWithin(line, each), index)),
  );
}

/** Tails are for lines that are left out rather than squeezed: their sections are never kept whole. */
function lineOf({ put, tail }: Section, line: string, index: number): string {
  const after = tail?.(index) ?? '';
  return put(escapeWithin(line, longestLine - after.length) + after, index);
}

function first(section: Section, room: number): string {
  const { lines, block = false } = section;
  const all = block ? lines : lines.map((line, index) => lineOf(section, line, index));
  for (let count = mostWithin(all, room); count > 0; count -= 1) {
    const text = joined(section, all.slice(0, count));
    if (text.length <= room) return text;
  }
  const none = more(lines.length);
  const titled = block || section.title === '' ? none : `${section.title}\n${none}`;
  return titled.length <= room ? titled : '';
}

/** How many lines fit at most, without what stands around them. */
function mostWithin(lines: readonly string[], room: number): number {
  let left = room;
  const tooMany = lines.findIndex((line) => (left -= line.length + 1) < -1);
  return tooMany < 0 ? lines.length : tooMany;
}

/** A section with these of its lines, and how many are left out. */
function joined({ title, lines, block = false }: Section, shown: readonly string[]): string {
  const left = lines.length - shown.length;
  const titled = [...(title === '' ? [] : [title]), ...shown];
  return [...(block ? [fence, ...titled, fence] : titled), ...(left === 0 ? [] : [more(left)])].join('\n');
}

function more(count: number): string {
  return `-# ${say('discord.andMore', { count: String(count) })}`;
}
