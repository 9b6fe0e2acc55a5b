import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import { commands } from '../../../commands/index.ts';
import { cases } from '../../cases/all.ts';
import { faults } from '../../cases/case.ts';
import { forbidden, misread } from '../../cases/misread.ts';
import { openClub } from './club.ts';
import type { Club } from './club.ts';
import { wholeText } from './whole-text.ts';

let club: Club;
let now = 0;
beforeAll(async () => {
  club = await openClub({ commands, ask, nowMs: () => now });
});
afterAll(() => club.close());

/** What a reader sees: without the marks of Markdown, each part on its line. */
function seen(text: string): string {
  return text
    .replaceAll(/\\(?=[^\w\s])/g, '')
    .replaceAll(/^(?:#{1,3} |- |\d+\. )/gm, '')
    .replaceAll('**', '');
}

/** Further apart than a case is kept, so that no question is read as going on from the one before. */
const APART_MS = 3 * 3_600_000;

const inTime = Object.entries(cases)
  .map(([id, expected], at) => ({ id, expected, atMs: expected.nowMs ?? at * APART_MS }))
  .toSorted((a, b) => a.atMs - b.atMs);

describe('every question, in a message that mentions the bot', () => {
  it.each(inTime)('$id', async ({ id, expected, atMs }) => {
    now = atMs;
    const reply = await club.standIn.mention(expected.asked).reply;
    const text = await wholeText(club, reply);
    const wrong = faults(seen(text), expected);
    if (id in misread) expect(wrong, `${id} is answered outright: take it off the list`).not.toEqual([]);
    else expect(wrong, seen(text)).toEqual([]);
    expect(forbidden(seen(text), expected)).toEqual([]);
    expect(reply.pings).toEqual([]);
  });
});
