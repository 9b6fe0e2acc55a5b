import { titles } from '../../../commands/answer.ts';
import { sourceText } from '../../../core/source.ts';
import { sources } from '../../../core/sources.ts';
import type { Drawn } from './drawn.ts';
import { bold, bullets, factSections, numbered, small, topSections } from './lines.ts';
import type { Section } from './share.ts';

/** Everything an answer says, in the order shown: results never stand below what was read. */
export function longSections(answer: Drawn): readonly Section[] {
  const { echo, read, unused, facts, table, steps, working, dangers, cautions } = answer;
  const cited = answer.sources.map((code) => sourceText(sources[code]));
  return [
    ...topSections(answer),
    ...factSections(facts, table),
    { title: bold(titles.steps), rank: 2, lines: steps, put: numbered },
    { title: bold(titles.dangers), rank: 1, lines: dangers, put: bullets },
    { title: bold(titles.cautions), rank: 1, lines: cautions, put: bullets },
    { title: bold(titles.read), rank: 5, lines: read, put: bullets, isApart: true },
    { title: bold(titles.unused), rank: 5, lines: unused, put: bullets },
    { title: bold(titles.echo), rank: 6, lines: echo === undefined ? [] : [echo], put: small },
    { title: bold(titles.working), rank: 6, lines: working, put: small },
    { title: bold(titles.sources), rank: 7, lines: cited, put: small },
  ];
}
