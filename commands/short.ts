import { sources } from '../core/sources.ts';
import type { Source } from '../core/source.ts';
import type { Answer, Fact, NextAction, Table } from './answer.ts';

/** What the short form holds at most; it fits one screen of a phone. Own choices. */
export const shortLimits = {
  /** Characters. */
  headline: 140,
  step: 110,
  danger: 110,
  read: 150,
  /** Lines. */
  facts: 3,
  steps: 3,
  urgentSteps: 5,
  dangers: 2,
  /** Lines or rows of a list at a time. */
  page: 8,
  tableColumns: 30,
  next: 4,
} as const;

/** What everybody gets: a page of the facts or rows, the first steps, and every danger. */
export interface Short {
  readonly headline: string;
  readonly facts: readonly Fact[];
  readonly table: Table | undefined;
  readonly steps: readonly string[];
  readonly dangers: readonly string[];
  /** The values that carry the result, and what was not used. */
  readonly read: string;
  readonly restsOn: string;
  readonly next: readonly NextAction[];
  /** What only the long form has: "2 more steps, the working"; empty where that is nothing. */
  readonly left: string;
  readonly pages: number;
}

/** The short form of an answer; of a list the page asked for, the first being 1. */
export function shortForm(given: Answer, page = 1): Short {
  const { headline, tone, facts, table, isList = false } = given;
  const isTable = table !== undefined && (facts.length <= 1 || page > 1);
  const steps = given.steps.slice(0, tone === 'urgent' ? shortLimits.urgentSteps : shortLimits.steps);
  const at = (page - 1) * shortLimits.page;
  const shownFacts = isList
    ? facts.slice(at, at + shortLimits.page)
    : facts.slice(0, page > 1 ? 0 : shortLimits.facts);
  const listed = Math.max(isList ? facts.length : 0, isTable ? table.rows.length : 0);
  const next = given.next.slice(0, shortLimits.next);
  return {
    headline,
    facts: shownFacts,
    table: isTable ? narrowed({ ...table, rows: table.rows.slice(at, at + shortLimits.page) }) : undefined,
    steps: page > 1 ? [] : steps,
    dangers: merged(given.dangers),
    read: readLine(given),
    restsOn: restsOn(given.sources.map((code) => sources[code])),
    next,
    left: leftOut(given, {
      facts: isList ? 0 : facts.length - shownFacts.length,
      steps: given.steps.length - steps.length,
    }),
    pages: Math.max(1, Math.ceil(listed / shortLimits.page)),
  };
}

/** Two lines hold all: the first danger has one of its own. */
function merged([first, ...others]: readonly string[]): readonly string[] {
  if (first === undefined) return [];
  return others.length === 0 ? [first] : [first, others.join(' ')];
}

/** The first values that fit a line, and everything that was not used. */
function readLine({ read, unused }: Answer): string {
  let room: number = shortLimits.read;
  const fitting = read.filter((line) => {
    room -= line.length + 2;
    return room >= -2;
  });
  return [...fitting, ...(unused.length === 0 ? [] : [`not used: ${unused.join(', ')}`])].join('; ');
}

const BASIS: Readonly<Record<Source['kind'], string>> = {
  standard: 'standard values',
  published: 'published work',
  practice: 'common practice',
  memory: 'values from memory',
  project: 'rules of our own',
};

/** What kinds of source it rests on, the surest first. */
function restsOn(cited: readonly Source[]): string {
  const kinds = Object.entries(BASIS).filter(([kind]) => cited.some((source) => source.kind === kind));
  return kinds.map(([, words]) => words).join(', ');
}

function leftOut(
  { working, cautions, table, facts }: Answer,
  { facts: facts_, steps }: { readonly facts: number; readonly steps: number },
): string {
  const isTableLeft = table !== undefined && facts.length > 1;
  return [
    ...(facts_ > 0 ? [counted(facts_, 'more line')] : []),
    ...(isTableLeft ? ['the table'] : []),
    ...(steps > 0 ? [counted(steps, 'more step')] : []),
    ...(working.length > 0 ? ['the working'] : []),
    ...(cautions.length > 0 ? ['what to mind as well'] : []),
  ].join(', ');
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`;
}

/** Columns from the left, as many as a phone shows side by side; at least one. */
function narrowed({ head, rows }: Table): Table {
  const gap = 2;
  let room = shortLimits.tableColumns + gap;
  const kept = head.filter((title, at) => {
    const widest = Math.max(title.length, ...rows.map((row) => row[at]?.length ?? 0));
    room -= widest + gap;
    return at === 0 || room >= 0;
  }).length;
  return { head: head.slice(0, kept), rows: rows.map((row) => row.slice(0, kept)) };
}
