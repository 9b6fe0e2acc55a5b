import { describe, expect, it } from 'vitest';
import { failureAnswer, problemAnswer } from '../../bot/discord/message/problem.ts';
import { leftOf } from '../../bot/discord/message/left.ts';
import { share } from '../../bot/discord/message/share.ts';
import { checkFileSize, readText } from '../../bot/files.ts';
import { isoDate, roomFor, shortEnough, zoneName } from '../../bot/store/limits.ts';
import { replyTo } from '../../bot/terminal/reply.ts';
import { tooFast } from '../../bot/turns.ts';
import { answer } from '../../commands/answer.ts';
import { shortForm } from '../../commands/short.ts';
import { Problem } from '../../core/problem.ts';
import { pretended } from '../action.ts';
import { inBrackets } from '../core/wording/bracketed.ts';
import { sampleDesk } from './terminal/sample.ts';

describe('the terminal room speaks the language in force', () => {
  it.each([
    ['/tid', '⟦There is no such command.⟧'],
    ['/tid', '⟦Did you mean /tide? Type /help for the list.⟧'],
    ['/dose pce days:2', '⟦Did you mean /dose pace?⟧'],
    ['/dose pace days:many', '⟦days is not a number I can use.⟧'],
    ['/dose pace days:many', '⟦a whole number such as 12⟧'],
    ['/dose pace days:1 days:2', '⟦days:1 and days:2⟧'],
    ['/dose pace dys:4', '⟦There is no option called dys in /dose pace.⟧'],
    ['/tide now', '⟦Type /tide alone.⟧'],
    ['5', '⟦There is nothing to pick from now.⟧'],
    ['why', '⟦There is no answer to show more of yet.⟧'],
    ['more', '⟦Ask something, or type /help.⟧'],
    ['/help', '⟦How to type⟧'],
    ['/help', '⟦/quit or Ctrl-D leaves.⟧'],
    ['/help dose pace', '⟦days: (required)⟧'],
    ['/help tide', '⟦none⟧'],
  ])('on %j: %s', async (typed, said) => {
    const style = { width: 200, bold: false };
    const before = { text: '', offers: [], leave: false };
    const { text } = await inBrackets(() => replyTo(typed, before, sampleDesk(), style));
    expect(text).toContain(said);
  });
});

describe("Discord's edge speaks it", () => {
  it('in a problem, a failure and a request to wait', () => {
    const problem = new Problem('No.', { field: 'now', given: '1', limit: '2', choices: ['a', 'b'] });
    const { facts, steps } = inBrackets(() => problemAnswer(problem));
    expect(facts.map(({ label }) => label)).toEqual(['⟦option⟧', '⟦given⟧', '⟦accepted⟧']);
    expect(steps).toEqual(['⟦Write one of these: a; b.⟧']);
    expect(inBrackets(() => failureAnswer('e1')).headline).toBe(
      '⟦That went wrong on our side. Nothing was worked out. Error e1.⟧',
    );
    expect(inBrackets(tooFast).steps[0]).toBe(
      '⟦I answer each member 12 times at once, then once every 5 seconds.⟧',
    );
  });

  it('in what is left out of a message', () => {
    const lines = Array.from({ length: 200 }, (_, at) => `${at} `.repeat(30));
    const cut = { title: '', rank: 3, lines, put: (line: string) => line };
    expect(inBrackets(() => share([cut]))[0]?.text).toMatch(/-# ⟦and \d+ more⟧$/);
  });

  it.each([
    [5, undefined],
    [6, '⟦1 more button⟧'],
    [7, '⟦2 more buttons⟧'],
  ])('in what %i buttons leave out', (count, said) => {
    const next = Array.from({ length: count }, (_, at) =>
      pretended({ label: `Go ${at}`, command: 'tide', input: {} }),
    );
    const whole = answer({ headline: 'So.', next });
    const short = { ...shortForm(whole), next: next.slice(0, 5) };
    expect(inBrackets(() => leftOf(whole, short))).toBe(said);
  });
});

describe('the store and files speak it', () => {
  it.each([
    [
      '⟦There is room for 200,000 readings a member.⟧',
      () => roomFor('x', 2e5 + 1, 2e5, 'log.roomForReadings'),
    ],
    ['⟦name is too long.⟧', () => shortEnough('name', 'abc', 1)],
    ['⟦That is not a date.⟧', () => isoDate('x', '2026-02-30')],
    ['⟦I do not know that time zone.⟧', () => zoneName('EST')],
    ['⟦That file is too large for me to read.⟧', () => checkFileSize('x', 'a.csv', 1e9)],
    ['⟦That file is not plain text.⟧', () => readText('x', 'a.csv', Uint8Array.of(0))],
  ])('%s', (said, run) => {
    expect(() => inBrackets(run)).toThrow(said);
  });

  it.each([
    [1, 'at most 1 letter'],
    [2, 'at most 2 letters'],
  ])('with the plural of %i', (most, limit) => {
    expect(() => shortEnough('name', 'abc', most)).toThrow(expect.objectContaining({ limit }));
  });
});
