import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import { commands } from '../../../commands/index.ts';
import { cases } from '../../cases/all.ts';
import { faults } from '../../cases/case.ts';
import { openClub } from './club.ts';
import type { Club } from './club.ts';

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

describe('every question, in a message that mentions the bot', () => {
  it.each(Object.entries(cases))('%s', async (_, expected) => {
    now = expected.nowMs ?? 0;
    const { reply } = club.standIn.mention(expected.asked);
    const { text, pings } = await reply;
    expect(faults(seen(text), expected), seen(text)).toEqual([]);
    expect(pings).toEqual([]);
  });
});
