import { sourcesNamed } from '../core/named-sources.ts';
import type { SourceCode } from '../core/sources.ts';
import { say } from '../core/wording/say.ts';
import type { Action, CommandName } from './calls.ts';
import type { Instant } from './instants.ts';

/** One line of result: what it is, its value with unit, and (where there is one) the verdict as a word. */
export interface Fact {
  readonly label: string;
  readonly value: string;
  readonly verdict?: string;
  /** The moment the value tells of. */
  readonly instant?: Instant;
  /** Discord id of someone the value tells of: Discord adds their name and pings nobody. */
  readonly personId?: string;
  /** Discord id of a channel or a role the value tells of, shown in the same way. */
  readonly channelId?: string;
  readonly roleId?: string;
}

/** Something the member can do next: a label and the command it runs, options as text. */
export type NextAction = { readonly [N in CommandName]: Action<N> }[CommandName];

/** How pressing an answer is; every platform shows the word with it, never a colour alone. */
export type Tone = 'urgent' | 'question' | 'plain';

/**
 * What a command answers, for every platform: the long form. Plain text only: renderers know markup and escape it.
 * `shortForm` (short.ts) takes what everybody gets from the front of each list, so that every list begins with what
 * decides: the first three facts and steps, the read values that carry the result.
 *
 * `headline` is the answer itself in one sentence. `read` is what was understood, assumptions included; `unused` what was
 * said and left out of account. `steps` are numbered by the renderer. `working` holds formulas with their numbers and
 * units. `dangers` is what can hurt somebody or an animal here, a line each, and is never left out; `cautions` are the
 * other remarks.
 */
export interface Answer {
  readonly headline: string;
  readonly tone: Tone;
  /** Moments its sentences tell of, besides those of its facts: shown as stamps where the platform has them. */
  readonly instants?: readonly Instant[];
  /** What the member has not been told yet, whatever they ask: shown first. */
  readonly notices?: readonly string[];
  /** The question as the command that asks the same. */
  readonly echo?: string;
  readonly read: readonly string[];
  readonly unused: readonly string[];
  readonly facts: readonly Fact[];
  /** The facts are of one rank, and shown a page at a time. */
  readonly isList?: boolean;
  readonly steps: readonly string[];
  readonly working: readonly string[];
  readonly dangers: readonly string[];
  readonly cautions: readonly string[];
  readonly sources: readonly SourceCode[];
  readonly next: readonly NextAction[];
  /** One of the next actions is to be chosen: all of them are shown, as they are where one thing is asked back. */
  readonly isMenu?: boolean;
  /** Rows under a head, for lists of readings. */
  readonly table?: Table;
  /** The table is what was asked for: it stands before facts. */
  readonly isTableFirst?: boolean;
  /** One subject each, shown as one gallery. */
  readonly pictures?: readonly Picture[];
  /** A text file for the asker alone. */
  readonly file?: TextFile;
}

export interface Table {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A drawing as SVG text; a platform turns it into PNG. `alt` says everything the picture says. */
export interface Picture {
  readonly name: string;
  readonly svg: string;
  readonly alt: string;
}

export interface TextFile {
  readonly name: string;
  readonly text: string;
}

/** The word under a headline; none where nothing presses. */
export function toneWord(tone: Tone): string {
  return tone === 'plain' ? '' : say(`answer.${tone}`);
}

/** Fills in the parts an answer leaves out. */
export function answer(parts: Partial<Answer> & Pick<Answer, 'headline'>): Answer {
  const none = { read: [], unused: [], facts: [], steps: [], working: [], sources: [], next: [] };
  const whole: Answer = { tone: 'plain', dangers: [], cautions: [], ...none, ...parts };
  return { ...whole, sources: [...new Set(whole.sources)] };
}

/** Adds every source that a text of the answer names, so that no "(published: ...)" is without its entry. */
export function withNamedSources(given: Answer): Answer {
  const { headline, read, facts, steps, working, dangers, cautions, table } = given;
  const values = facts.flatMap(({ label, value, verdict }) => [label, value, verdict ?? '']);
  const cells = table === undefined ? [] : [...table.head, ...table.rows.flat()];
  const lines = [headline, ...read, ...values, ...steps, ...working, ...dangers, ...cautions, ...cells];
  const named = sourcesNamed(lines);
  return { ...given, sources: [...new Set([...given.sources, ...named])] };
}
