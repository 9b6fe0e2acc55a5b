import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commands } from '../../../commands/index.ts';
import { ask } from '../../ask.ts';
import { userIds } from '../../discord/standin/world.ts';
import { openClub } from './club.ts';
import type { Club } from './club.ts';
import { longReply } from './whole-text.ts';

let club: Club;
beforeEach(async () => {
  club = await openClub({ commands, ask });
});
afterEach(() => club.close());

const question = 'raise alk 7.2 to 8.4 in 75 gal with soda ash';

describe('numbers on Discord', () => {
  it('are written as in the locale of whoever asks', async () => {
    const { standIn } = club;
    const asked = await standIn.slash('ask', { question }, { locale: 'de' }).reply;
    expect(asked.text).toContain('6,4 g of sodium carbonate');
    expect((await standIn.slash('ask', { question }, { locale: 'en-US' }).reply).text).toContain('6.4 g');
  });

  it('are those of whoever presses, where an answer is looked at again', async () => {
    const { standIn } = club;
    const asked = await standIn.slash('ask', { question }, { locale: 'de' }).reply;
    const other = { userId: userIds.second, locale: 'en-GB' };
    expect((await longReply(club, asked, other)).text).toContain('6.4 g of sodium carbonate');
    expect((await longReply(club, asked, { locale: 'de' })).text).toContain('6,4 g of sodium carbonate');
  });

  it('stay so in messages, where the locale is that of the last interaction, else of the server', async () => {
    const { standIn } = club;
    expect((await standIn.mention(question).reply).text).toContain('6.4 g');
    await standIn.slash('help', {}, { locale: 'pt-BR' }).reply;
    expect((await standIn.mention(question).reply).text).toContain('6,4 g');
    expect((await standIn.mention(question, { userId: userIds.second }).reply).text).toContain('6.4 g');
    expect((await standIn.directMessage(question).reply).text).toContain('6,4 g');
  });

  it('leave what buttons run as it was', async () => {
    const { standIn } = club;
    const asked = await standIn.slash('ask', { question }, { locale: 'de' }).reply;
    const ids = JSON.stringify(asked.components).match(/"custom_id":"[^"]*"/g) ?? [];
    expect(ids.join()).toContain('3.2 g');
    expect(ids.join()).not.toContain('3,2 g');
  });
});
