import {
  titles,
  toneWords,
  type Answer,
  type Fact,
  type NextAction,
  type Table,
} from '../../commands/answer.ts';
import { shortForm } from '../../commands/short.ts';
import type { Problem } from '../../core/problem.ts';
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
    ...(toneWords[answer.tone] === '' ? [] : [toneWords[answer.tone]]),
    ...tabled(facts, rows, style),
    ...filed(written, style),
    ...section(titles.steps, list(steps, style, numbered), style),
    ...section(titles.dangers, list(dangers, style), style),
    ...small(
      [
        ...(read === '' ? [] : [`Read: ${read}.`]),
        ...(restsOn === '' ? [] : [`Rests on: ${restsOn}.`]),
        ...(pages > 1 ? [`Page ${at} of ${pages}: type more.`] : []),
        ...(left === '' && !hasWorking(answer)
          ? []
          : [`Type why for ${left === '' ? 'the working' : left}.`]),
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
  return offered('Next: type a number', labels, style);
}

/** What the person can put right: the sentence, where, what was given, the limit, a hint and the choices. */
export function renderProblem(problem: Problem, style: Style, numberedChoices: boolean): string {
  const { field, given, limit, hint, choices } = problem;
  const rows = [
    ['Where', field],
    ...(given === undefined ? [] : [['Given', shortened(given, LONGEST_ECHO)]]),
    ...(limit === undefined ? [] : [['Accepted', limit]]),
    ...(choices.length === 0 || numberedChoices ? [] : [['Choices', choices.join(', ')]]),
  ];
  return page([
    ...strong(wrap(problem.message, style.width), style),
    ...table(rows, style),
    ...(hint === undefined ? [] : wrap(hint, style.width, '  ')),
    ...(numberedChoices ? offered('Which one? Type a number', choices, style) : []),
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
