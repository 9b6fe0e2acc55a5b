import { sources } from '../core/sources.ts';
import type { Answer, Fact, NextAction, Table } from './answer.ts';
import { factsLength, fitted, pageSize } from './short/fitted.ts';
import { shortLimits } from './short/limits.ts';
import { narrowed } from './short/narrowed.ts';
import { leftWords, readLine, restsOn } from './short/said.ts';

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
  /** Steps and lines that only the long form has; empty where there are none. */
  readonly left: string;
  readonly pages: number;
}

/** The short form of an answer; of a list the page asked for, the first being 1. Tables have at most so many columns. */
export function shortForm(given: Answer, page = 1, columns: number = shortLimits.tableColumns): Short {
  const { headline, facts, steps, table, isTableFirst = false, isList = false, isMenu = false } = given;
  const must = {
    headline,
    dangers: merged(given.dangers),
    read: readLine(given),
    restsOn: restsOn(given.sources.map((code) => sources[code])),
  };
  const isTable = table !== undefined && (isTableFirst || facts.length <= 1 || page > 1);
  const size = isList ? pageSize(facts) : shortLimits.page;
  const [from, to] = [(page - 1) * size, page * size];
  const hasNoFacts = isList || isTableFirst;
  const listedFacts = isList ? facts.slice(from, to) : [];
  const taken = lengthOf(must) + factsLength(listedFacts);
  const fit = fitted(hasNoFacts ? { ...given, facts: [] } : given, taken);
  const shown = isList ? listedFacts : facts.slice(0, page > 1 ? 0 : fit.facts);
  const listed = Math.max(isList ? facts.length : 0, isTable ? table.rows.length : 0);
  return {
    ...must,
    facts: shown,
    table: isTable ? narrowed({ ...table, rows: table.rows.slice(from, to) }, columns) : undefined,
    steps: page > 1 ? [] : steps.slice(0, fit.steps),
    next: given.next.slice(0, isMenu || given.tone === 'question' ? shortLimits.choices : shortLimits.next),
    left: leftWords({
      facts: isList ? 0 : facts.length - fit.facts,
      steps: steps.length - fit.steps,
      isTable: table !== undefined && !isTable,
    }),
    pages: Math.max(1, Math.ceil(listed / size)),
  };
}

/** Two lines hold all: the first danger has one of its own. */
function merged([first, ...others]: readonly string[]): readonly string[] {
  if (first === undefined) return [];
  return others.length === 0 ? [first] : [first, others.join(' ')];
}

function lengthOf({
  headline,
  dangers,
  read,
  restsOn: basis,
}: Pick<Short, 'headline' | 'dangers' | 'read' | 'restsOn'>): number {
  return headline.length + dangers.join('').length + read.length + basis.length;
}
