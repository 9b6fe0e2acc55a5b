import { expect, it } from 'vitest';
import { lightCommands } from '../../../commands/light.ts';
import { problemOf, runner, textOf } from '../text.ts';

const ask = runner(lightCommands);

// Two to three days: common practice, no source.
it.each([
  [{}, /^Two to three days without light do corals no harm/],
  [{ days: '2 days' }, /^2 days: no harm\. /],
  [{ days: '12 hours' }, /^12 hours: no harm\. /],
  [{ days: '5 days' }, /^5 days is long: get some light over them sooner\. /],
])('/light dark %o', (input: Record<string, string>, headline) => {
  const given = ask('dark', input);
  expect(given.headline).toMatch(headline);
  expect(textOf(given)).toMatch(/begin at about half and go up over one to two weeks/);
  expect(textOf(given)).toMatch(/No blackout against algae/);
});

it('asks how long that is', () => expect(problemOf(() => ask('dark', { days: 'long' })).field).toBe('days'));
