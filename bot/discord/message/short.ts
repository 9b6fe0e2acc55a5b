import type { Short } from '../../../commands/short.ts';
import { say } from '../../../core/wording/say.ts';
import type { Drawn } from './drawn.ts';
import { bold, bullets, factSections, numbered, small, topSections } from './lines.ts';
import type { Section } from './share.ts';

/** What everybody gets, in the order shown: what to do first, what it rests on last. */
export function shortSections(answer: Drawn, short: Short, left: string): readonly Section[] {
  const { facts, table, steps, dangers, read, restsOn } = short;
  const said = [
    ['answer.read', read],
    ['answer.restsOn', restsOn],
    ['answer.left', left],
  ] as const;
  const lines = said.flatMap(([key, words]) => (words === '' ? [] : [say(key, { words })]));
  return [
    ...topSections(answer),
    ...factSections(facts, table),
    { title: '', rank: 2, lines: steps, put: numbered },
    { title: bold(say('answer.dangers')), rank: 1, lines: dangers, put: bullets },
    { title: '', rank: 5, lines, put: small, isApart: true },
  ];
}
