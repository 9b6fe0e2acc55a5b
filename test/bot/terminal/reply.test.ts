import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { replyTo, type Reply } from '../../../bot/terminal/reply.ts';
import { answer } from '../../../commands/answer.ts';
import { sampleDesk } from './sample.ts';

const style = { width: 80, bold: false };

/** The last reply to lines typed one after another. */
function after(...lines: string[]): Reply {
  const desk = sampleDesk();
  let reply: Reply = { text: '', offers: [], leave: false };
  for (const line of lines) reply = replyTo(line, reply.offers, desk, style);
  expect(desk.reported).toEqual([]);
  return reply;
}

describe('a number', () => {
  it('runs a next action, with its texts in the kinds the options take', () => {
    const { text } = after('/dose amount of:x now:7.2 dKH goal:8', '1');
    expect(text).toContain('Running /dose pace days:3 form:flakes\n');
    expect(text).toContain('{"days":3,"form":"flakes"}');
  });

  it('answers a question asked back by putting the choice in for its option', () => {
    const asked = after('/dose amount of:now goal:8 now:3.2');
    expect(asked.text).toContain('[1] 3.2 dKH');
    expect(after('/dose amount of:now goal:8 now:3.2', '2').text).toContain('now from 3.2 meq/L to 8');
  });

  it('puts a choice into plain words', () => {
    expect(after('in 17.2 L, guess 7.2', '1').text).toContain('Heard: in 17.2 L, guess 7.2 dKH');
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
  ])('puts right %j', (line, expected) => {
    const { text } = after(line, '1');
    expect(text).toContain(expected);
  });

  it('outside what was offered is said so, and the offer stays', () => {
    const missed = after('/dose amount of:x now:7.2 dKH goal:8', '7');
    expect(missed.text).toContain('I offered 1 to 1.');
    expect(missed.offers).toHaveLength(1);
    expect(after('5').text).toContain('There is nothing to pick from now.');
    expect(after('/dose amount of:x now:7.2 dKH goal:8', '0').text).toContain('I offered 1 to 1.');
  });

  it('no longer picks from an older reply', () => {
    expect(after('/dose amount of:x now:7.2 dKH goal:8', '/tide', '1').text).toContain('nothing to pick');
  });
});

describe('a failure', () => {
  it('is reported and named by its id, without its text', () => {
    const desk = sampleDesk();
    const { text, leave } = replyTo('/leak', [], desk, style);
    expect(text).toContain('It is logged as F1.');
    expect(text).not.toContain('secret');
    expect(leave).toBe(false);
    expect(desk.reported).toHaveLength(1);
  });

  it.each([
    ['no command', { command: 'nowhere', input: {} }],
    ['no option', { command: 'tide', input: { at: '9' } }],
    ['a value it refuses', { command: 'dose pace', input: { days: 'many' } }],
  ])('is what a next action with %s is', (_, action) => {
    const desk = sampleDesk();
    const ask = () => answer({ headline: 'x', next: [{ label: 'go', ...action }] });
    expect(replyTo('words', [], { ...desk, ask }, style).text).toContain('It is logged as F1.');
    expect(desk.reported).toHaveLength(1);
  });
});

describe('any lines', () => {
  it('are answered without a throw, a report or a control character', () => {
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
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 5 }), (lines) => {
        expect(after(...lines).text.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}]/u);
      }),
      { numRuns: 500 },
    );
  });
});
