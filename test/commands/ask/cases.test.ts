import { forAsker } from '../../../commands/for-asker.ts';
import { describe, expect, it } from 'vitest';
import { openStore } from '../../../bot/store/open.ts';
import type { Answer } from '../../../commands/answer.ts';
import type { Taken } from '../../../commands/ask/answer-message.ts';
import { findCommand } from '../../../commands/index.ts';
import { ask } from '../../ask.ts';
import { cases } from '../../cases/all.ts';
import { type Case, faults } from '../../cases/case.ts';
import { missed, misread, outright } from '../../cases/misread.ts';
import { sums } from '../../cases/sums.ts';
import { asked } from '../../corpus.ts';
import { textOf } from '../text.ts';

/** The answer to a case by somebody who keeps nothing yet; `taken` where a button was chosen. */
function answered({ asked: question, nowMs = 0 }: Case, taken?: Taken): Answer {
  const keep = openStore({ file: ':memory:', nowMs: () => nowMs }).keepFor('100000000000000001');
  const asking = { nowMs, keep, zone: 'UTC' };
  return forAsker(ask(question, asking, taken), question, asking);
}

function whole(given: Answer): string {
  const rows = given.table?.rows.map((row) => row.join(': ')) ?? [];
  return [textOf(given), ...rows].join('\n');
}

describe.each(outright)('%s', (_, expected) => {
  const { values, says } = expected;
  const text = whole(answered(expected));

  it.each(values)('prints $value ($at)', ({ at, value, tolerance = 0.02 }) => {
    const found = at
      .exec(text)
      ?.slice(1)
      .find((part) => part !== undefined);
    expect(found, text).toBeDefined();
    expect(Math.abs(Number(found) / value - 1), `${String(found)} in\n${text}`).toBeLessThanOrEqual(
      tolerance + 1e-12,
    );
  });

  it.each(says)('says %s', (pattern) => expect(text).toMatch(pattern));
});

describe.each(Object.entries(cases))('%s', (_, expected) => {
  const given = answered(expected);

  it.each(expected.never)('never says %s', (pattern) => expect(whole(given)).not.toMatch(pattern));

  it('offers only commands there are', () => {
    for (const { command } of given.next) expect(findCommand(command.split(' ')), command).toBeDefined();
  });
});

describe('what is misread', () => {
  it.each(missed)('%s: still not answered outright', (_, expected) => {
    expect(faults(whole(answered(expected)), expected)).not.toEqual([]);
  });

  const offered = missed.flatMap(([id, expected]) => {
    const as = misread[id];
    return as === undefined ? [] : [{ id, as, expected }];
  });

  it.each(offered)('$id: the right answer is offered as $as', ({ as, expected }) => {
    expect(answered(expected).next).toContainEqual(
      expect.objectContaining({ command: 'ask', input: expect.objectContaining({ as }) as unknown }),
    );
    const chosen = whole(answered(expected, { as }));
    expect(faults(chosen, expected), chosen).toEqual([]);
  });

  it('is a case', () => expect(missed.map(([id]) => id).sort()).toEqual(Object.keys(misread).sort()));
});

it('every question of the corpus has its check', () => {
  expect(Object.keys(sums).sort()).toEqual(Object.keys(asked).sort());
});
