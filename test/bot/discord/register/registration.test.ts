import { REST } from 'discord.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { definitions } from '../../../../bot/discord/register/definition.ts';
import { compare, register } from '../../../../bot/discord/register/registration.ts';
import { restOptions } from '../../../../bot/discord/rest.ts';
import { startStandIn } from '../../../discord/standin/server.ts';
import type { StandIn } from '../../../discord/standin/server.ts';
import { guildId } from '../../../discord/standin/world.ts';
import { closeClean } from '../club.ts';
import { demoCommands } from '../demo.ts';

const wanted = definitions(demoCommands);
const names = ['echo', 'tank', 'broken'];
const [first, second] = wanted;
let standIn: StandIn;
let rest: REST;

beforeAll(async () => {
  standIn = await startStandIn();
  rest = new REST(restOptions(standIn.apiBase)).setToken(standIn.token);
});

afterAll(() => closeClean(standIn));

const puts = (): number => standIn.requests.filter(({ method }) => method === 'PUT').length;

describe.each([['global'], [{ guild: guildId }]] as const)('register %j', (scope) => {
  it('writes nothing when dry', async () => {
    const before = puts();
    expect((await register(rest, wanted, scope, true)).added).toEqual(names);
    expect(puts()).toBe(before);
  });

  it('writes once, then nothing', async () => {
    const before = puts();
    expect((await register(rest, wanted, scope, false)).added).toEqual(names);
    const again = await register(rest, wanted, scope, false);
    expect(again).toEqual({ added: [], changed: [], removed: [], unchanged: names });
    expect(puts()).toBe(before + 1);
  });

  it('sees what is new, other and gone', async () => {
    const [echo, tank, broken] = wanted;
    if (!echo || !tank || !broken) throw new Error('a demo command is missing');
    const other = [{ ...echo, name: 'other' }, { ...tank, description: 'Something else' }, broken];
    const change = await register(rest, other, scope, false);
    expect(change).toEqual({ added: ['other'], changed: ['tank'], removed: ['echo'], unchanged: ['broken'] });
    await register(rest, wanted, scope, false);
  });
});

describe('compare', () => {
  it('is blind to what Discord adds and to defaults', () => {
    const added = { id: '1', version: '2', nsfw: false, name_localizations: null, contexts: [2, 1, 0] };
    expect(compare([{ ...first, ...added }], wanted, 'global').unchanged).toEqual(['echo']);
  });

  it('sees a changed option, choice and context', () => {
    const other = [
      { ...first, contexts: [0] },
      { ...second, options: [] },
    ];
    expect(compare(other, wanted, 'global').changed).toEqual(['echo', 'tank']);
  });
});
