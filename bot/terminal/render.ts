import { toneWord, type Answer, type Fact, type NextAction, type Table } from '../../commands/answer.ts';
import { shortForm } from '../../commands/short.ts';
import type { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';
import { shortened } from './plain.ts';
import { headed, table } from './table.ts';
import { list, section, strong, wrap, type Style } from './wrap.ts';

const LONGEST_ECHO = 200;

/** The short form as a page; of a list the page asked for. `written` tells of files. */
export function renderShort(
  answer: Answer,
  style: Style,
  { written = [], at = 1 }: { readonly written?: readonly string[]; readonly at?: number } = {},
): string {
  const {
    headline,
    facts,
    table: rows,
    steps,
    dangers,
    read,
    restsOn,
    next,
    left,
    pages,
  } = shortForm(answer, at, Infinity);
  return page([
    ...noted(answer, style),
    ...strong(wrap(headline, style.width), style),
    ...[toneWord(answer.tone)].filter((word) => word !== ''),
    ...tabled(facts, rows, style),
    ...filed(written, style),
    ...section(say('answer.steps'), list(steps, style, numbered), style),
    ...section(say('answer.dangers'), list(dangers, style), style),
    ...small(
      [
        ...(read === '' ? [] : [say('terminal.read', { words: read })]),
        ...(restsOn === '' ? [] : [say('terminal.restsOn', { words: restsOn })]),
        ...(pages > 1 ? [say('terminal.page', { page: at, pages })] : []),
        ...(left === '' && !hasWorking(answer)
          ? []
          : [say('terminal.why', { words: left === '' ? say('terminal.theWorking') : left })]),
      ],
      style,
    ),
    ...nextSteps(next, style),
  ]);
}

function hasWorking({ working, cautions, sources }: Answer): boolean {
  return working.length + cautions.length + sources.length > 0;
}

export function tabled(facts: readonly Fact[], rows: Table | undefined, style: Style): string[] {
  return [
    ...(facts.length === 0 ? [] : ['', ...table(facts.map(cells), style)]),
    ...(rows === undefined ? [] : ['', ...headed(rows, style)]),
  ];
}

function noted({ notices = [] }: Answer, style: Style): string[] {
  return notices.length === 0 ? [] : [...notices.flatMap((text) => wrap(text, style.width)), ''];
}

function filed(written: readonly string[], style: Style): string[] {
  return written.length === 0 ? [] : ['', ...written.flatMap((text) => wrap(text, style.width))];
}

function small(lines: readonly string[], style: Style): string[] {
  return lines.length === 0 ? [] : ['', ...lines.flatMap((line) => wrap(line, style.width))];
}

export function nextSteps(next: readonly NextAction[], style: Style): string[] {
  const labels = next.map(({ label }) => label);
  return offered(say('terminal.next'), labels, style);
}

/** What the person can put right: the sentence, where, what was given, the limit, a hint and the choices. */
export function renderProblem(problem: Problem, style: Style, numberedChoices: boolean): string {
  const { field, given, limit, hint, choices } = problem;
  const rows = [
    [say('terminal.where'), field],
    ...(given === undefined ? [] : [[say('terminal.given'), shortened(given, LONGEST_ECHO)]]),
    ...(limit === undefined ? [] : [[say('terminal.accepted'), limit]]),
    ...(choices.length === 0 || numberedChoices ? [] : [[say('terminal.choices'), choices.join(', ')]]),
  ];
  return page([
    ...strong(wrap(problem.message, style.width), style),
    ...table(rows, style),
    ...(hint === undefined ? [] : wrap(hint, style.width, '  ')),
    ...(numberedChoices ? offered(say('terminal.which'), choices, style) : []),
  ]);
}

/** Lines that can be picked by number. */
export function offered(title: string, labels: readonly string[], style: Style): string[] {
  return section(
    title,
    list(labels, style, (place) => `[${place}]`),
    style,
  );
}

/** What was typed, as a piped session shows it. */
export function renderEcho(typed: string, style: Style): string {
  return page(wrap(shortened(typed, LONGEST_ECHO), style.width, '> '));
}

export function page(lines: readonly string[]): string {
  return `${lines.join('\n')}\n`;
}

function cells({ label, value, verdict }: Fact): readonly string[] {
  return verdict === undefined ? [label, value] : [label, value, verdict];
}

export function numbered(place: number): string {
  return `${place}.`;
}
