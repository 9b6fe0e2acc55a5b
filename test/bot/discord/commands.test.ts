import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/terminal/read.ts';
import { ask } from '../../../commands/ask.ts';
import { commands } from '../../../commands/index.ts';
import type { GivenOptions } from '../../discord/standin/slash-options.ts';
import { openClub } from './club.ts';
import type { Club } from './club.ts';

let club: Club;

beforeAll(async () => {
  club = await openClub({ commands, ask });
});

afterAll(() => club.close());

describe('the real commands on Discord', () => {
  it.each(commands.map((command) => [command.example, command] as const))('%s', async (example, command) => {
    const line = readLine(example, commands);
    if (line.kind !== 'command') throw new Error('the example is no command');
    const [name, subcommand] = command.path;
    const how = subcommand === undefined ? {} : { subcommand };
    const reply = await club.standIn.slash(name, line.input as GivenOptions, how).reply;
    const answer = command.run(line.input, { nowMs: 0 });
    expect(reply.ephemeral).toBe(command.private);
    expect(reply.text.replace(/[\\\u200b]/g, '')).toContain(answer.headline.slice(0, 60));
    expect(reply.text.split('\n').filter((text) => /^\d+\. /.test(text)).length).toBeGreaterThanOrEqual(
      Math.min(answer.steps.length, 1),
    );
    for (const caution of answer.cautions) expect(reply.text.replaceAll('\\', '')).toContain(caution);
  });

  it('computes the dose', async () => {
    const options = { of: 'alkalinity', now: '7.2', goal: '8.4', with: 'sodium carbonate', volume: '75 gal' };
    const used = club.standIn.slash('dose', options, { subcommand: 'amount' });
    const reply = await used.reply;
    expect(reply.text).toContain('6.4 g');
    expect((await used.acknowledged).elapsedMs).toBeLessThan(3000);
  });

  it('names what is wrong to the asker only', async () => {
    const options = { of: 'alkalinity', now: '7.2', goal: '8.4', with: 'sodium carbonate', volume: 'lots' };
    const reply = await club.standIn.slash('dose', options, { subcommand: 'amount' }).reply;
    expect(reply.ephemeral).toBe(true);
    expect(reply.text).toMatch(/option: volume\n- given: lots/);
  });

  it('answers plain words', async () => {
    const reply = await club.standIn.mention(
      'my alk is 7.2 and I want 8.4 in 75 gal, how much sodium carbonate?',
    ).reply;
    expect(reply.text).toContain('6.4 g');
  });

  it('runs every next action it offers', async () => {
    const { standIn } = club;
    const buttons = standIn.sent.flatMap((sent) =>
      [...JSON.stringify(sent.components).matchAll(/"custom_id":"([^"]+)"/g)].map((found) => found[1] ?? ''),
    );
    expect(buttons.length).toBeGreaterThan(0);
    for (const id of new Set(buttons)) {
      expect((await standIn.component(id).reply).text).not.toMatch(/Error [0-9a-f]{8}|no longer/);
    }
  });
});
