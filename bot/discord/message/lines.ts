import { toneWord, type Fact, type Table } from '../../../commands/answer.ts';
import { blockLines } from './block.ts';
import type { Drawn } from './drawn.ts';
import type { Section } from './share.ts';
import { tailOf } from './tail.ts';

export const bold = (title: string): string => `**${title}**`;
export const bullets = (line: string): string => `- ${line}`;
export const plainly = (line: string): string => line;
export const small = (line: string): string => `-# ${line}`;
export const numbered = (line: string, index: number): string => `${index + 1}. ${line}`;

/** What stands above all else in both forms: the lower the rank, the longer a section is kept when room is short. */
export function topSections(answer: Drawn): readonly Section[] {
  const { headline, tone, notices = [], notes = [] } = answer;
  const word = toneWord(tone);
  const untold = (answer.pictures ?? []).filter((_, index) => answer.pngs?.[index] === undefined);
  return [
    { title: '', rank: 0, lines: [headline], put: (line) => `### ${line}` },
    { title: '', rank: 1, lines: word === '' ? [] : [word], put: small },
    { title: '', rank: 1, lines: notices, put: plainly },
    { title: '', rank: 2, lines: notes.map(factText), put: small, tail: (index) => tailOf(notes[index]) },
    { title: '', rank: 1, lines: untold.map(({ alt }) => alt), put: plainly },
  ];
}

export function factSections(facts: readonly Fact[], table: Table | undefined): readonly Section[] {
  const [head = '', ...rows] = table === undefined ? [] : blockLines(table);
  return [
    {
      title: '',
      rank: 3,
      lines: facts.map(factText),
      put: bullets,
      tail: (index) => tailOf(facts[index]),
    },
    { title: head, rank: 4, lines: rows, put: plainly, block: true },
  ];
}

function factText({ label, value, verdict }: Fact): string {
  return `${label}: ${value}${verdict === undefined ? '' : ` (${verdict})`}`;
}
