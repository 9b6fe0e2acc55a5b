import { titles, type Answer } from '../../commands/answer.ts';
import { sourceText } from '../../core/source.ts';
import { sources } from '../../core/sources.ts';
import { nextSteps, numbered, page, tabled } from './render.ts';
import { list, section, strong, wrap, type Style } from './wrap.ts';

/** Everything an answer holds, each part under its title. */
export function renderLong(answer: Answer, style: Style): string {
  const { headline, echo, read, unused, facts, table: rows, steps, working, dangers, cautions } = answer;
  const cited = answer.sources.map((code) => sourceText(sources[code]));
  const part = (title: string, lines: readonly string[]): string[] =>
    section(title, list(lines, style), style);
  return page([
    ...strong(wrap(headline, style.width), style),
    ...tabled(facts, rows, style),
    ...section(titles.steps, list(steps, style, numbered), style),
    ...part(titles.dangers, dangers),
    ...part(titles.cautions, cautions),
    ...part(titles.read, read),
    ...part(titles.unused, unused),
    ...part(titles.echo, echo === undefined ? [] : [echo]),
    ...part(titles.working, working),
    ...part(titles.sources, cited),
    ...nextSteps(answer.next, style),
  ]);
}
