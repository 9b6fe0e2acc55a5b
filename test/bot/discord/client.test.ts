import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { channelIds, userIds } from '../../discord/standin/world.ts';
import { nowMs, openClub } from './club.ts';
import type { Club } from './club.ts';

let club: Club;

beforeEach(async () => {
  club = await openClub();
});

afterEach(() => club.close());

describe('intents', () => {
  it('asks for guilds, guild messages and direct messages, none privileged', () => {
    const identified = club.standIn.gateway.log.find((event) => event.what === 'identified');
    expect(identified?.intents).toBe((1 << 0) | (1 << 9) | (1 << 12));
  });
});

describe('slash commands', () => {
  it('answers with one callback, in public, with the clock that was passed in', async () => {
    const used = club.standIn.slash('echo', { reading: '8.3 dKH' });
    const reply = await used.reply;
    expect(reply.text).toContain('### 8.3 dKH');
    expect(reply.text).toContain(`at ${nowMs}`);
    expect(reply.ephemeral).toBe(false);
    expect(used.interaction.callbacks).toHaveLength(1);
    expect(reply.allowedMentions?.['parse']).toEqual([]);
  });

  it('passes numbers and booleans of a subcommand as they are', async () => {
    const options = { volume: '75 gal', share: 12.5, fresh: true };
    const reply = await club.standIn.slash('tank', options, { subcommand: 'size' }).reply;
    expect(reply.text).toContain('75 gal, 12.5 share, true');
  });

  it('works in direct messages', async () => {
    const reply = await club.standIn.slash('echo', { reading: 'hello' }, { dm: true }).reply;
    expect(reply.text).toContain('hello');
  });

  it('answers a private command to the asker only', async () => {
    const reply = await club.standIn.slash('tank', { of: 'calcium' }, { subcommand: 'of' }).reply;
    expect(reply.ephemeral).toBe(true);
    expect(reply.text).toContain('calcium usual');
  });

  it('names option, value, limit and hint of a problem to the asker only, and offers the choices', async () => {
    const { standIn } = club;
    const reply = await standIn.slash('tank', { volume: '75' }, { subcommand: 'size' }).reply;
    expect(reply.ephemeral).toBe(true);
    for (const part of [
      'option: volume',
      'given: 75',
      '1 L to 100 000 L',
      'Write the unit after the number.',
    ]) {
      expect(reply.text).toContain(part);
    }
    const chosen = await standIn.component('run:tank size?volume=75 US gal', {
      messageId: String(reply.message['id']),
    }).reply;
    expect(chosen.text).toContain('75 US gal, no share, false');
  });

  it('says of a failure only the id that is in the log', async () => {
    const reply = await club.standIn.slash('broken', { with: 'sesame' }).reply;
    expect(reply.ephemeral).toBe(true);
    const id = /Error ([0-9a-f]{8})/.exec(reply.text)?.[1];
    const line = club.log.find((entry) => entry.includes(`"errorId":"${id}"`)) ?? '';
    expect(line).toContain('TypeError');
    expect(line).toContain('demo.ts');
    expect(reply.text).not.toMatch(/nothing can be done|TypeError/);
    expect(club.log.join('')).not.toMatch(/sesame|stand-in-token/);
  });
});

describe('buttons', () => {
  it('runs again for whoever presses', async () => {
    await club.standIn.slash('echo', { reading: '50 % = 1/2 & more?' }).reply;
    const id = 'run:echo?reading=50 %25 %3D 1/2 %26 more%3F';
    const reply = await club.standIn.component(id, { userId: userIds.second }).reply;
    expect(reply.text).toContain('50 % = 1/2 & more?');
  });
});

describe('autocomplete', () => {
  it('offers complete values', async () => {
    const how = { subcommand: 'of', focused: 'of' };
    const choices = await club.standIn.autocomplete('tank', { of: 'alk' }, how).choices;
    expect(choices.length).toBeGreaterThan(0);
    expect(choices.length).toBeLessThanOrEqual(25);
    expect(String(choices[0]?.['value'])).toMatch(/^alk/i);
  });

  it('offers nothing for an option without a list', async () => {
    const how = { subcommand: 'size', focused: 'volume' };
    expect(await club.standIn.autocomplete('tank', { volume: '7' }, how).choices).toEqual([]);
  });
});

describe('plain words', () => {
  it('answers a mention without the mention', async () => {
    const asked = club.standIn.mention('my alk is 7.2');
    const reply = await asked.reply;
    expect(reply.text).toContain('You asked: my alk is 7.2');
    expect(reply.body['message_reference']).toMatchObject({ message_id: asked.id });
    expect(reply.pings).toEqual([]);
  });

  it('answers a direct message', async () => {
    expect((await club.standIn.directMessage('my alk is 7.2').reply).text).toContain(
      'You asked: my alk is 7.2',
    );
  });

  it('answers a reply that pings it', async () => {
    const { standIn } = club;
    const first = await standIn.mention('first').reply;
    const replyTo = String(first.message['id']);
    expect((await standIn.mention('second', { replyTo }).reply).text).toContain('You asked: second');
  });

  it('explains itself to an empty mention', async () => {
    const reply = await club.standIn.mention('').reply;
    expect(reply.text).toMatch(/own words(?:.|\n)*\/echo: Says what was said/);
  });

  it('lists the choices of a problem and logs a failure', async () => {
    expect((await club.standIn.directMessage('unclear').reply).text).toContain('one; two');
    expect((await club.standIn.directMessage('broken').reply).text).toMatch(/Error [0-9a-f]{8}/);
  });

  it('keeps silent where it is not spoken to', async () => {
    const { standIn } = club;
    standIn.channelMessage('no one in particular');
    standIn.channelMessage('@everyone good morning');
    standIn.channelMessage(`<@${userIds.second}> good morning`);
    standIn.mention('from itself', { userId: userIds.bot });
    await standIn.mention('last').reply;
    expect(standIn.sent.map((sent) => sent.text)).toEqual([expect.stringContaining('You asked: last')]);
  });
});

describe('hostile text', () => {
  const hostile = `@everyone <@${userIds.second}> <#${channelIds.chat}> [x](https://evil.example) ||s|| \`\`\` # h\n> q\n-# s`;

  it('is echoed without a mention, a link or markup', async () => {
    const { standIn } = club;
    const replies = [
      await standIn.mention(hostile).reply,
      await standIn.slash('echo', { reading: hostile }).reply,
    ];
    for (const reply of replies) {
      expect(reply.pings).toEqual([]);
      expect(reply.allowedMentions?.['parse']).toEqual([]);
      expect(reply.text).not.toMatch(/@everyone|(?<!\\)<[@#]|(?<!\\)\[x|https:\/\/|(?<!\\)\||\n>|(?<!\\)`/);
    }
  });

  it('takes 4,000 characters', async () => {
    expect((await club.standIn.mention('*'.repeat(3900)).reply).text.length).toBeLessThanOrEqual(4000);
  });
});

describe('faults of the connection', () => {
  it('runs an interaction delivered twice once', async () => {
    const { standIn } = club;
    const used = standIn.slash('echo', { reading: 'twice' }, { twice: true });
    expect((await used.reply).text).toContain('twice');
    expect((await standIn.slash('echo', { reading: 'after' }).reply).text).toContain('after');
    expect(used.interaction.callbacks).toHaveLength(1);
    expect(club.log.join('')).not.toContain('errorId');
  });

  it('survives a late interaction', async () => {
    const { standIn } = club;
    expect((await standIn.slash('echo', { reading: 'late' }, { late: true }).callback()).code).toBe(10062);
    expect((await standIn.slash('echo', { reading: 'after' }).reply).text).toContain('after');
    expect(club.log.join('')).toContain('"code":10062');
    expect(club.log.join('')).not.toContain('interaction-');
  });

  it('says so when Discord refuses the form of an answer', async () => {
    const { standIn } = club;
    standIn.failNext({ path: '/callback' }, 400, { code: 50035, message: 'Invalid Form Body' });
    const reply = await standIn.slash('echo', { reading: 'odd' }).reply;
    const id = /Error ([0-9a-f]{8})/.exec(reply.text)?.[1];
    expect(reply.ephemeral).toBe(true);
    expect(club.log.join('')).toContain(`"errorId":"${id}"`);
  });

  it('logs where it may not speak and goes on', async () => {
    const { standIn } = club;
    standIn.mention('here?', { channelId: channelIds.notices });
    expect((await standIn.mention('and here?').reply).text).toContain('and here?');
    await vi.waitFor(() => expect(club.log.join('')).toContain('an answer was not delivered'));
  });

  it('resumes after the gateway drops', async () => {
    const { standIn } = club;
    standIn.dropGateway();
    await standIn.until(() => standIn.gateway.log.find((event) => event.what === 'resumed'), 'resume');
    expect((await standIn.mention('still there?').reply).text).toContain('still there?');
  });
});
