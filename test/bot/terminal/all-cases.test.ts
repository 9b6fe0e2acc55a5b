import { describe, expect, it } from 'vitest';
import { cases } from '../../cases/all.ts';
import { faults } from '../../cases/case.ts';
import { room } from './a-room.ts';

/** What a reader sees: without the marks of lists, a name and its value joined by a colon. */
function seen(text: string): string {
  return text
    .replaceAll(/^ *(?:- |\d+\. |\[\d+\] )?/gm, '')
    .replaceAll(/(?<=\S) {2,}/g, ': ')
    .trim();
}

describe('every question, typed into a room where nothing is kept', () => {
  it.each(Object.entries(cases))('%s', async (_, expected) => {
    const { asked, nowMs } = expected;
    const shown = await room().typeWide([asked], 0, nowMs);
    const text = seen(shown.slice(shown.indexOf(asked) + asked.length));
    expect(faults(text, expected), text).toEqual([]);
  });
});
