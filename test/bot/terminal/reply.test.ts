import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Reply, Standing } from '../../../bot/terminal/desk.ts';
import { replyTo } from '../../../bot/terminal/reply.ts';
import { answer } from '../../../commands/answer.ts';
import { ask } from '../../ask.ts';
import { commands } from '../../../commands/index.ts';
import { sampleDesk } from './sample.ts';
import { pretended } from '../../action.ts';

const style = { width: 80, bold: false };

/** The last reply to lines typed one after another. */
async function after(...lines: string[]): Promise<Reply> {
  const desk = sampleDesk();
  let reply: Reply = { text: '', offers: [], leave: false };
  for (const line of lines) reply = await replyTo(line, reply, desk, style);
  expect(desk.reported).toEqual([]);
  return reply;
}

describe('a number', () => {
  it('runs a next action, with its texts in the kinds the options take', async () => {
    const { text } = await after('/dose amount of:x now:7.2 dKH goal:8', '1');
    expect(text).toContain('Running /dose pace days:3 form:flakes\n');
    expect(text).toContain('{"days":3,"form":"flakes"}');
  });

  it('answers a question asked back by putting the choice in for its option', async () => {
    const asked = await after('/dose amount of:now goal:8 now:3.2');
    expect(asked.text).toContain('[1] 3.2 dKH');
    expect((await after('/dose amount of:now goal:8 now:3.2', '2')).text).toContain(
      'now from 3.2 meq/L to 8',
    );
  });

  it('puts a choice into plain words', async () => {
    expect((await after('in 17.2 L, guess 7.2', '1')).text).toContain('Heard: in 17.2 L, guess 7.2 dKH');
  });

  it.each([
    ['/tid', 'It is 1234 ms.'],
    ['/dos pace days:3 form:flakes', '{"days":3,"form":"flakes"}'],
    ['/dose days:3', 'There is no option called days in /dose amount.'],
    ['/dose pce days:2', '{"days":2,"form":"powder"}'],
    ['/dose pace form:lumps at:lumps days:1', '{"days":1,"form":"flakes","at":"lumps"}'],
    ['/dose pace at:lumps days:1 form:lumps', '{"days":1,"form":"flakes","at":"lumps"}'],
    ['/dose pace dys:4', '{"days":4,"form":"powder"}'],
    ['/help tid', 'Says the moment it runs in'],
  ])('puts right %j', async (line, expected) => {
    const { text } = await after(line, '1');
    expect(text).toContain(expected);
  });

  it('outside what was offered is said so, and the offer stays', async () => {
    const missed = await after('/dose amount of:x now:7.2 dKH goal:8', '7');
    expect(missed.text).toContain('I offered 1 to 1.');
    expect(missed.offers).toHaveLength(1);
    expect((await after('5')).text).toContain('There is nothing to pick from now.');
    expect((await after('/dose amount of:x now:7.2 dKH goal:8', '0')).text).toContain('I offered 1 to 1.');
  });

  it('picks from the last reply that offered something', async () => {
    expect((await after('/dose amount of:x now:7.2 dKH goal:8', '/tide', '1')).text).toContain(
      'Running /dose pace days:3 form:flakes',
    );
  });

  it('of a question can be said in words, right after it', async () => {
    expect((await after('guess 7.2', 'meq/L')).text).toBe('Heard: guess 7.2 meq/L\n');
    expect((await after('guess 7.2', '/tide', 'meq/L')).text).toBe('Heard: meq/L\n');
  });
});

describe('a tank that is kept', () => {
  it('fills in what is left out, in commands and in words, and is removed by a number', async () => {
    const desk = { ...sampleDesk(), commands, ask };
    const reply = (line: string, before: Standing = { offers: [] }) => replyTo(line, before, desk, style);
    const dose = '/dose amount of:alkalinity now:7.2 goal:8.4 with:soda ash';
    expect((await reply(dose)).text).toContain('per 100 L');
    expect((await reply('/tank new name:Pantry volume:250 L kind:mixed')).text).toContain('Pantry is kept');
    expect((await reply(dose)).text).toContain('net water of your tank Pantry: 250 L');
    expect((await reply('raise alk 7.2 to 8.4 with soda ash')).text).toContain('your tank Pantry');
    const asked = await reply('/mydata erase');
    expect(asked.text).toContain('[1] Erase everything');
    expect((await reply('1', asked)).text).toContain('Everything kept of you is removed.');
    expect((await reply('/tank show')).text).toContain('You have no tank here yet.');
    expect(desk.reported).toEqual([]);
  });
});

describe('a failure', () => {
  it('is reported and named by its id, without its text', async () => {
    const desk = sampleDesk();
    const { text, leave } = await replyTo('/leak', { offers: [] }, desk, style);
    expect(text).toContain('It is logged as F1.');
    expect(text).not.toContain('secret');
    expect(leave).toBe(false);
    expect(desk.reported).toHaveLength(1);
  });

  it.each([
    ['no command', { command: 'nowhere', input: {} }],
    ['no option', { command: 'tide', input: { at: '9' } }],
    ['a value it refuses', { command: 'dose pace', input: { days: 'many' } }],
  ])('is what a next action with %s is', async (_, action) => {
    const desk = sampleDesk();
    const offering = () => answer({ headline: 'x', next: [pretended({ label: 'go', ...action })] });
    expect((await replyTo('words', { offers: [] }, { ...desk, ask: offering }, style)).text).toContain(
      'It is logged as F1.',
    );
    expect(desk.reported).toHaveLength(1);
  });
});

describe('any lines', () => {
  it('are answered without a throw, a report or a control character', async () => {
    const parts = fc.constantFrom(
      '/dose amount ',
      '/dose ',
      'now:',
      ' goal:',
      '/help ',
      'guess 7.2',
      '\u001B[2J',
      '1',
      '3.2',
    );
    const line = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(parts, { maxLength: 8 }).map((all) => all.join('')),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(line, { minLength: 1, maxLength: 5 }), async (lines) => {
        expect((await after(...lines)).text.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}]/u);
      }),
      { numRuns: 500 },
    );
  });
});
