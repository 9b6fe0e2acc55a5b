/** Where a number comes from. `kind` keeps published values apart from habit and from memory. */
export interface Source {
  /** People, or the body that publishes; absent for habit, memory and what is worked out here. */
  readonly authors?: string;
  readonly year?: number | 'undated';
  readonly title: string;
  /** Journal, report or place, with volume and pages where known. */
  readonly in?: string;
  /** Identifier it is found by. */
  readonly where?: string;
  /** Which part of this entry is from memory or was read second hand. */
  readonly doubt?: string;
  /** What a text calls it where authors and year do not do. */
  readonly label?: string;
  readonly kind: 'published' | 'standard' | 'practice' | 'memory' | 'project';
}

/** A source of which it is known how much was read; most papers were read as abstracts only. */
export interface SeenSource extends Source {
  readonly seen: string;
}

/** The whole entry for a list of sources: "Lapid E.D., Chadwick N.E. 2006. Long-term effects ..., 10.3354/meps313115". */
export function sourceText({ authors, year, title, in: journal, where, doubt }: Source): string {
  const head = [authors, year === 'undated' ? '(undated)' : year].filter((part) => part !== undefined);
  const place = [title, journal, where].filter((part) => part !== undefined).join(', ');
  const whole = head.length === 0 ? place : `${head.join(' ')}. ${place}`;
  return doubt === undefined ? whole : `${whole} (${doubt})`;
}

/** What a text calls it: "Lapid & Chadwick 2006", "Lapid et al. 2004", "NOAA Fisheries 2014"; none for habit and memory. */
export function sourceLabel({ authors, year, label }: Source): string | undefined {
  if (label !== undefined || authors === undefined) return label;
  const surnames = authors
    .replace(/ et al\.$/, '')
    .split(/, | & /)
    .map((author) => author.replace(/(?: (?:[A-Z]\.-?)+)+$/, ''));
  const [first = '', second] = surnames;
  const many = surnames.length > 2 || authors.endsWith(' et al.');
  const who = many ? `${first} et al.` : second === undefined ? first : `${first} & ${second}`;
  return year === undefined || year === 'undated' ? who : `${who} ${year}`;
}
