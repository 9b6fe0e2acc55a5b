import { sourceText } from '../../../core/source.ts';
import { sources } from '../../../core/sources.ts';
import { say } from '../../../core/wording/say.ts';
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
    { title: bold(say('answer.steps')), rank: 2, lines: steps, put: numbered },
    { title: bold(say('answer.dangers')), rank: 1, lines: dangers, put: bullets },
    { title: bold(say('answer.cautions')), rank: 1, lines: cautions, put: bullets },
    { title: bold(say('answer.readTitle')), rank: 5, lines: read, put: bullets, isApart: true },
    { title: bold(say('answer.unused')), rank: 5, lines: unused, put: bullets },
    { title: bold(say('answer.echo')), rank: 6, lines: echo === undefined ? [] : [echo], put: small },
    { title: bold(say('answer.working')), rank: 6, lines: working, put: small },
    { title: bold(say('answer.sources')), rank: 7, lines: cited, put: small },
  ];
}
