import type { Answer } from '../../commands/answer.ts';
import { sourceText } from '../../core/source.ts';
import { sources } from '../../core/sources.ts';
import { say } from '../../core/wording/say.ts';
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
    ...section(say('answer.steps'), list(steps, style, numbered), style),
    ...part(say('answer.dangers'), dangers),
    ...part(say('answer.cautions'), cautions),
    ...part(say('answer.readTitle'), read),
    ...part(say('answer.unused'), unused),
    ...part(say('answer.echo'), echo === undefined ? [] : [echo]),
    ...part(say('answer.working'), working),
    ...part(say('answer.sources'), cited),
    ...nextSteps(answer.next, style),
  ]);
}
