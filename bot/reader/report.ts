import type { Figures, Miss } from '../../core/language/measure.ts';

const ROWS: readonly (readonly [keyof Figures, string])[] = [
  ['kindFirst', 'kind right, first guess'],
  ['kindInThree', 'kind among the first three'],
  ['card', 'card right'],
  ['part', 'part of each number right'],
  ['partAndOf', 'part, and what a level is of, right'],
  ['taken', 'numbers that a sum can take right'],
  ['allNumbers', 'all numbers of a message right'],
  ['outright', 'sure enough to answer outright'],
  ['outrightWrong', 'of those wrong'],
  ['dangerShown', 'emergencies shown at once'],
  ['dangerAsked', 'emergencies shown or asked about'],
  ['falseAlarms', 'calm messages with an alarm'],
];

/** A first try as a section of the report: its figures and every miss. */
export function firstTry(batch: string, date: string, figures: Figures, misses: readonly Miss[]): string {
  const rows = ROWS.map(([key, label]) => `| ${label} | ${percent(figures[key])} |`);
  const missed = misses.map(
    ({ text, kind, read, numbers }) =>
      `- ${JSON.stringify(text)}: ${[`wants ${kind}`, `read ${read.join(', ')}`, ...numbers].join('; ')}`,
  );
  return [
    `## ${batch}, first try, ${date}`,
    '',
    `${figures.messages} messages by somebody who saw no code and no other sentence.`,
    '',
    '| what | figure |',
    '|---|---|',
    ...rows,
    '',
    'Read wrong:',
    '',
    ...missed,
    '',
  ].join('\n');
}

/** The locked batches: what they had when locked, and today. */
export function lockedTable(
  then: Readonly<Record<string, Figures>>,
  today: Readonly<Record<string, Figures>>,
): string {
  const heads = Object.keys(then);
  const rows = ROWS.map(([key, label]) => {
    const cells = heads.map((batch) => `${percent(then[batch]?.[key])} -> ${percent(today[batch]?.[key])}`);
    return `| ${label} | ${cells.join(' | ')} |`;
  });
  return [`| what | ${heads.join(' | ')} |`, `|---|${heads.map(() => '---|').join('')}`, ...rows].join('\n');
}

function percent(share: number | undefined): string {
  return share === undefined ? '-' : `${(100 * share).toFixed(1)} %`;
}
