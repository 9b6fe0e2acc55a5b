import { titles, type Answer, type Fact } from '../../commands/answer.ts';
import type { Problem } from '../../core/problem.ts';
import { sourceText } from '../../core/source.ts';
import { sources } from '../../core/sources.ts';
import { shortened } from './plain.ts';
import { headed, table } from './table.ts';
import { list, section, strong, wrap, type Style } from './wrap.ts';

const LONGEST_ECHO = 200;

/** An answer as a page: the headline and its facts, then each part that has something to say. `written` tells of files. */
export function renderAnswer(answer: Answer, style: Style, written: readonly string[] = []): string {
  const cited = answer.sources.map((code) => sourceText(sources[code]));
  return page([
    ...strong(wrap(answer.headline, style.width), style),
    ...section(titles.read, list(answer.read, style), style),
    ...(answer.facts.length === 0 ? [] : ['', ...table(answer.facts.map(cells), style)]),
    ...(answer.table === undefined ? [] : ['', ...headed(answer.table, style)]),
    ...(written.length === 0 ? [] : ['', ...written.flatMap((text) => wrap(text, style.width))]),
    ...section(titles.steps, list(answer.steps, style, numbered), style),
    ...section(titles.working, list(answer.working, style), style),
    ...section(titles.cautions, list(answer.cautions, style), style),
    ...section(titles.sources, list(cited, style), style),
    ...offered(
      'Next: type a number',
      answer.next.map(({ label }) => label),
      style,
    ),
  ]);
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

function numbered(place: number): string {
  return `${place}.`;
}
