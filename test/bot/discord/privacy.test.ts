import * as fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readCallId } from '../../../bot/discord/asked/call.ts';
import { runText, runWords } from '../../../bot/discord/outcome.ts';
import type { MemberExport } from '../../../bot/store/export.ts';
import { ask } from '../../ask.ts';
import { optionsOf } from '../../../commands/options.ts';
import { userIds } from '../../discord/standin/world.ts';
import { deskOf, openClub } from './club.ts';
import type { Club } from './club.ts';
import { wholeText } from './whole-text.ts';
import { memberCommands, moveIn } from './members.ts';

const { keeper, second } = userIds;
const SECRETS = /Pantry|251\.7|251,7|sesame/;
const question = 'raise alk 7.2 to 8.4 with soda ash';
const dose = { of: 'alkalinity', now: '7.2', goal: '8.4', with: 'soda ash' };

let club: Club;
/** All that is kept of one member; what others show them is not theirs. */
function kept(id: string): string {
  const { shownTanks, ...more } = club.store.keepFor(id).exportAll() as MemberExport;
  return JSON.stringify({ ...more, shownTanks: shownTanks.filter(({ as }) => as === 'owner') });
}

beforeEach(async () => {
  club = await openClub({ commands: memberCommands, ask });
  moveIn(club.store.keepFor(keeper), 'Pantry', 251.7, 'sesame');
});

afterEach(() => club.close());

describe('what uses a tank is for its member alone', () => {
  it('a command that leaves out the volume', async () => {
    const reply = await club.standIn.slash('dose', dose, { subcommand: 'amount' }).reply;
    expect(reply.text).toContain('net water of your tank Pantry');
    expect(reply.ephemeral).toBe(true);
    const other = await club.standIn.slash('dose', dose, { subcommand: 'amount', userId: second }).reply;
    expect(other.text).toContain('per 100 L');
    expect(other.ephemeral).toBe(false);
  });

  it('a command that names its own volume is public', async () => {
    const given = { ...dose, volume: '75 gal' };
    const reply = await club.standIn.slash('dose', given, { subcommand: 'amount' }).reply;
    expect(reply.ephemeral).toBe(false);
    expect(reply.text).not.toMatch(SECRETS);
  });

  it('a question by slash command', async () => {
    const reply = await club.standIn.slash('ask', { question }).reply;
    expect(reply.text).toMatch(SECRETS);
    expect(reply.ephemeral).toBe(true);
    const other = await club.standIn.slash('ask', { question }, { userId: second }).reply;
    expect(other.ephemeral).toBe(false);
  });

  it('a direct message, but not a mention in a channel', async () => {
    expect((await club.standIn.directMessage(question).reply).text).toContain('Pantry');
    const mention = await club.standIn.mention(question).reply;
    expect(mention.text).not.toMatch(SECRETS);
    expect(mention.text).toContain('per 100 L');
    const pinged = await club.standIn.mention(question, { replyTo: String(mention.message['id']) }).reply;
    expect(pinged.text).not.toMatch(SECRETS);
    expect((await club.standIn.directMessage(question, { userId: second }).reply).text).not.toMatch(SECRETS);
  });

  it('every command about a tank and its problems, but not a card that is shared', async () => {
    const { standIn } = club;
    const used = [
      standIn.slash('tank', {}, { subcommand: 'show' }),
      standIn.slash('tank', { tank: 'Nowhere' }, { subcommand: 'show' }),
      standIn.slash('tank', { name: 'Pantry', volume: '90 L' }, { subcommand: 'new' }),
      standIn.slash('tank', { tank: 'Nowhere' }, { subcommand: 'share' }),
      standIn.slash('log', {}, { subcommand: 'show' }),
      standIn.slash('log', { readings: 'alk 8.2', tank: 'Nowhere' }, { subcommand: 'add' }),
      standIn.slash('log', {}, { subcommand: 'export' }),
      standIn.slash('checkup'),
      standIn.slash('mydata', {}, { subcommand: 'export' }),
      standIn.slash('mydata', {}, { subcommand: 'erase' }),
    ];
    for (const each of used) expect((await each.reply).ephemeral).toBe(true);
    const card = await standIn.slash('tank', {}, { subcommand: 'share' }).reply;
    expect(card.ephemeral).toBe(false);
    expect(card.text).toContain('Pantry');
    expect(card.text).not.toMatch(/sesame|8\.3 dKH/);
  });
});

describe('another member', () => {
  const options = [
    ['tank', 'show', { tank: 'Pantry' }],
    ['tank', 'show', { tank: '1' }],
    ['tank', 'use', { tank: 'Pantry' }],
    ['tank', 'share', { tank: 'Pantry' }],
    ['tank', 'edit', { tank: 'Pantry', volume: '5 L' }],
    ['tank', 'edit', { volume: '5 L' }],
    ['tank', 'show-to', { who: { user: second }, tank: 'Pantry' }],
    ['tank', 'show-to', { stop: 'yes', tank: 'Pantry' }],
    ['tank', 'shown', { by: { user: keeper } }],
    ['tank', 'shown', { by: { user: keeper }, tank: 'Pantry' }],
    ['tank', 'shown', {}],
    ['tank', 'remove', { tank: 'Pantry', sure: 'yes' }],
    ['tank', 'list', {}],
    ['log', 'show', { tank: 'Pantry' }],
    ['log', 'show', {}],
    ['log', 'trend', { tank: 'Pantry', of: 'alkalinity' }],
    ['log', 'add', { tank: 'Pantry', readings: 'alk 7.1' }],
    ['log', 'undo', { tank: 'Pantry' }],
    ['log', 'export', { tank: 'Pantry' }],
    ['mydata', 'export', {}],
    ['mydata', 'erase', { sure: 'yes' }],
  ] as const;

  it.each(options)('reaches nothing with /%s %s %j', async (command, subcommand, given) => {
    const before = kept(keeper);
    const reply = await club.standIn.slash(command, given, { subcommand, userId: second }).reply;
    const files = reply.files.map(({ data }) => Buffer.from(data).toString()).join('');
    const echoed = Object.values(given).join(' ');
    const told = (reply.text + files).replaceAll('Pantry', echoed.includes('Pantry') ? '' : 'Pantry');
    expect(told).not.toMatch(SECRETS);
    expect(kept(keeper)).toBe(before);
  });

  it('is offered the names of their own tanks only, while typing', async () => {
    moveIn(club.store.keepFor(second), 'Tide pool', 90, 'own');
    const how = { subcommand: 'show', focused: 'tank' };
    const names = async (userId: string) =>
      (await club.standIn.autocomplete('tank', { tank: '' }, { ...how, userId }).choices).map(
        ({ name }) => name,
      );
    expect(await names(keeper)).toEqual(['Pantry']);
    expect(await names(second)).toEqual(['Tide pool']);
    expect(await names(userIds.steward)).toEqual([]);
  });

  it('who presses a button acts on their own', async () => {
    moveIn(club.store.keepFor(second), 'Tide pool', 90, 'own');
    const { standIn } = club;
    const before = kept(keeper);
    const press = async (id: string) => {
      await standIn.slash('offer', { with: id }).reply;
      return standIn.component(id, { userId: second }).reply;
    };
    const shown = await press('run:tank show?');
    expect(shown.text).toContain('Tide pool');
    expect(shown.ephemeral).toBe(true);
    expect((await press('run:tank show?tank=Pantry')).text).toContain('You have no tank called Pantry');
    const noVolume = 'run:dose amount?of=alkalinity&now=7.2&goal=8.4&with=soda ash';
    const dosed = await press(noVolume);
    expect(dosed.text).toContain('Tide pool');
    expect(dosed.ephemeral).toBe(true);
    expect(kept(keeper)).toBe(before);
    const own = await standIn.component(noVolume).reply;
    const after = kept(keeper);
    expect(own.ephemeral).toBe(false);
    expect(own.text).toContain('per 100 L');
    expect(own.text).not.toMatch(SECRETS);
    expect((await press('run:mydata erase?sure=yes')).text).toContain('Everything kept of you is removed.');
    expect(club.store.keepFor(second).tanks()).toEqual([]);
    expect(kept(keeper)).toBe(after);
  });
});

describe('a tank that is shown', () => {
  it('is seen by that helper alone, privately, until it is taken back', async () => {
    const { standIn } = club;
    const granted = await standIn.slash('tank', { who: { user: second } }, { subcommand: 'show-to' }).reply;
    expect(granted.ephemeral).toBe(true);
    expect(granted.text).toContain(`<@${second}>`);
    expect(granted.pings).toEqual([]);
    const look = async (userId: string) =>
      standIn.slash('tank', { by: { user: keeper } }, { subcommand: 'shown', userId }).reply;
    const seen = await look(second);
    expect(seen.ephemeral).toBe(true);
    const whole = await wholeText(club, seen, { userId: second });
    expect(whole).toMatch(/Pantry: 251\.7 L[^]*alkalinity +8\.3 dKH/);
    expect(whole).not.toContain('sesame');
    expect((await look(userIds.steward)).text).toContain('They show you no tank now.');
    const held = `run:tank show-to?who=${second}&stop=yes&tank=Pantry`;
    expect((await standIn.component(held).reply).text).toContain('Taken back');
    expect((await look(second)).text).not.toMatch(SECRETS);
  });
});

describe('any custom id', () => {
  const options = memberCommands.flatMap((command) => optionsOf(command.options).map(({ name }) => name));
  const names = fc.constantFrom(...options, 'person', 'keep', 'user', '__proto__', 'constructor');
  const likely = [
    '1',
    '2',
    'Pantry',
    'pantry',
    'Tide pool',
    'yes',
    '10 L',
    keeper,
    "x' OR 1=1 --",
    'calcium',
  ];
  const values = fc.oneof(fc.constantFrom(...likely), fc.string({ maxLength: 12 }));
  const crafted = fc
    .tuple(
      fc.constantFrom(...memberCommands.map(({ path }) => path.join(' '))),
      fc.array(fc.tuple(names, values), { maxLength: 4 }),
    )
    .map(([name, pairs]) => {
      const query = pairs.map(([key, value]) => `${key}=${encodeURIComponent(value)}`).join('&');
      return `run:${name}?${query}`;
    });

  it('of another member changes nothing of the first and tells nothing', () => {
    const desk = deskOf(club.store, { commands: memberCommands, ask });
    const own = club.store.keepFor(second);
    const before = kept(keeper);
    let ran = 0;
    const press = (id: string): void => {
      const call = readCallId(id);
      if (call === undefined) return;
      if (own.tankInUse() === undefined) moveIn(own, 'Tide pool', 90, 'own');
      const { answer, hidden } = runText(desk, { personId: second, place: undefined }, call);
      ran += 1;
      const told = JSON.stringify(answer);
      expect(told).not.toMatch(/251\.7|sesame|went wrong/);
      expect(kept(keeper)).toBe(before);
      if (!hidden && call.command !== 'tank share') expect(told).not.toContain('net water of your tank');
    };
    fc.assert(fc.property(crafted, press), { numRuns: 2000 });
    fc.assert(fc.property(fc.string(), press), { numRuns: 200 });
    expect(ran).toBeGreaterThanOrEqual(2000);
  });

  it('cannot make a public answer of words tell of a tank', () => {
    const { answer } = runWords(
      deskOf(club.store, { commands: memberCommands, ask }),
      `<@${keeper}> Pantry: ${question}`,
      {},
    );
    expect(JSON.stringify(answer)).not.toMatch(/251\.7|sesame/);
  });
});

describe('an erased member', () => {
  it('is told kindly by the buttons of before', async () => {
    const { standIn } = club;
    await standIn.slash('offer', { with: 'run:tank show?tank=Pantry' }).reply;
    const asked = await standIn.slash('mydata', {}, { subcommand: 'erase' }).reply;
    expect(asked.text).toContain('Pantry: 1 reading, 0 additions');
    expect(await wholeText(club, asked)).toContain('seven days');
    const erase = 'run:mydata erase?sure=yes';
    expect((await standIn.component(erase).reply).text).toContain('Everything kept of you is removed.');
    const again = await standIn.component(erase).reply;
    expect(again.text).toContain('Nothing is kept of you here');
    expect(again.ephemeral).toBe(true);
    const shown = await standIn.component('run:tank show?tank=Pantry').reply;
    expect(shown.text).toContain('You have no tank here yet.');
    expect(shown.text).toContain('/tank new');
    expect(club.log.join('')).not.toMatch(/errorId|sesame|Pantry/);
  });
});
