import { describe, expect, it } from 'vitest';
import { cases } from '../../cases/all.ts';
import { type Case, faults } from '../../cases/case.ts';
import { forbidden, missed, outright } from '../../cases/misread.ts';
import { room } from './a-room.ts';

/** What a reader sees: without the marks of lists, a name and its value joined by a colon. */
function seen(text: string): string {
  return text
    .replaceAll(/^ *(?:- |\d+\. |\[\d+\] )?/gm, '')
    .replaceAll(/(?<=\S) {2,}/g, ': ')
    .trim();
}

/** What the room shows of a case, and what it shows of it when asked why. */
async function shownOf({ asked, nowMs }: Case): Promise<string> {
  const shown = await room().typeWide([asked, 'why'], 0, nowMs);
  return seen(shown.slice(shown.indexOf(asked) + asked.length));
}

describe('every question, typed into a room where nothing is kept', () => {
  it.each(outright)('%s', async (_, expected) => {
    const text = await shownOf(expected);
    expect(faults(text, expected), text).toEqual([]);
  });

  it.each(missed)('%s: still not answered outright', async (_, expected) => {
    expect(faults(await shownOf(expected), expected)).not.toEqual([]);
  });

  it.each(Object.entries(cases))('%s: says nothing it must not', async (_, expected) => {
    expect(forbidden(await shownOf(expected), expected)).toEqual([]);
  });
});
