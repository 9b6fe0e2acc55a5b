import { describe, expect, it } from 'vitest';
import { shortForm, type Short } from '../../commands/short.ts';
import { shortLimits } from '../../commands/short/limits.ts';
import { hazardsOf } from './hazards.ts';
import { realAnswers } from './inputs.ts';

const all = realAnswers().map((one) => ({ ...one, short: shortForm(one.answer) }));

/** The lines of a short form as they are read, without its buttons. */
function linesOf({ headline, facts, table, steps, dangers, read, restsOn, left }: Short): readonly string[] {
  const cells = table === undefined ? [] : [table.head, ...table.rows];
  return [
    headline,
    ...facts.map(({ label, value, verdict = '' }) => `${label}: ${value} ${verdict}`.trim()),
    ...cells.map((row) => row.join('  ')),
    ...steps,
    ...dangers,
    ...[read, restsOn, left].filter((line) => line !== ''),
  ];
}

function sizeOf(short: Short): number {
  return linesOf(short).reduce((sum, line) => sum + line.length, 0);
}

/** The value below which so great a share lies. */
function share(values: readonly number[], part: number): number {
  return values.toSorted((a, b) => a - b)[Math.floor(part * (values.length - 1))] ?? NaN;
}

describe('the short form of real answers', () => {
  it('is taken of at least 400', () => expect(all.length).toBeGreaterThanOrEqual(400));

  it('has at most 450 characters in half of them, 750 in nine of ten, and never more than 1,200', () => {
    const sizes = all.map(({ short }) => sizeOf(short));
    expect(share(sizes, 0.5)).toBeLessThanOrEqual(450);
    expect(share(sizes, 0.9)).toBeLessThanOrEqual(750);
    expect(all.filter(({ short }) => sizeOf(short) > 1200).map(({ typed }) => typed)).toEqual([]);
  });

  it('says the act, the number or the verdict in a headline of 140 characters', () => {
    const long = all.filter(({ short }) => short.headline.length > shortLimits.headline);
    expect(long.map(({ typed, short }) => `${typed} -> ${short.headline}`)).toEqual([]);
  });

  it('has steps of 110 characters', () => {
    const long = all.flatMap(({ short }) => short.steps.filter(({ length }) => length > shortLimits.step));
    expect([...new Set(long)]).toEqual([]);
  });

  it('holds every hazard of the long form', () => {
    const lost = all.flatMap(({ typed, answer: { cautions }, short }) => {
      const said = hazardsOf([short.headline, ...short.steps, ...short.dangers].join('\n'));
      return cautions.flatMap((line) =>
        [...hazardsOf(line)]
          .filter((hazard) => !said.has(hazard))
          .map((hazard) => `${hazard}: ${line} (${typed})`),
      );
    });
    expect(lost).toEqual([]);
  });
});
