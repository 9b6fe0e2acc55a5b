import { beforeEach, describe, expect, it } from 'vitest';
import { openStore } from '../../../bot/store/open.ts';
import { openTalks } from '../../../bot/talks.ts';
import type { Answer, NextAction } from '../../../commands/answer.ts';
import { ask, askCommand } from '../../../commands/ask.ts';
import type { Keep } from '../../../commands/keep.ts';
import { inputOf } from '../../action.ts';
import { plain, scriptedReader } from '../../scripted-reader.ts';
import { problemOf } from '../text.ts';

const NOW_MS = Date.UTC(2026, 4, 5, 12);
const marked =
  '[20 g](amount substance) soda ash in [75 gal](system), alk [7.2](now alkalinity) to [8.4](wanted alkalinity)';
const reader = scriptedReader([
  {
    marked,
    kinds: [
      ['dose-amount', 0.7],
      ['dose-effect', 0.15],
      ['solution', 0.08],
      ['limewater', 0.05],
      ['dose-use', 0.02],
    ],
  },
  { marked: 'thanks', kinds: [['greeting', 0.9]] },
]);

let keep: Keep;
let talkOf: ReturnType<typeof openTalks>['talkOf'];

beforeEach(() => {
  keep = openStore({ file: ':memory:', nowMs: () => NOW_MS }).keepFor('100000000000000001');
  ({ talkOf } = openTalks(() => NOW_MS));
});

const context = () => ({ nowMs: NOW_MS, keep, reader, talk: talkOf('me', ['here']) });
const press = (button: NextAction | undefined): Answer =>
  askCommand.run(inputOf(button ?? expect.unreachable()), context());
const notThat = ({ next }: Answer) => next.find(({ label }) => label === 'Not that');

describe('Not that', () => {
  it('keeps what was refused through several presses, with a button that stays short', () => {
    const first = ask(plain(marked), context());
    expect(first.headline).toContain('sodium carbonate');
    const second = press(notThat(first));
    expect(inputOf(notThat(first) ?? expect.unreachable())).toEqual({ not: 'dose-amount' });
    expect(second.headline).toContain('Which of these do you mean?');
    expect(second.next.map((one) => inputOf(one)['as'] ?? 'none')).toEqual([
      'dose-effect',
      'solution',
      'limewater',
      'dose-use',
      'none',
    ]);
    const third = press(notThat(second));
    expect(third.headline).toContain('I did not understand that');
    expect(talkOf('me', ['here']).before?.refused).toContain('dose-amount');
  });

  it('forgets what was refused with the next message', () => {
    press(notThat(ask(plain(marked), context())));
    ask('thanks', context());
    expect(talkOf('me', ['here']).before?.refused).toBeUndefined();
  });

  it('takes a message anew in the place of what it was taken for, and adds nothing twice', () => {
    ask(plain(marked), context());
    press({ label: 'What an amount does', command: 'ask', input: { as: 'dose-effect' } });
    const { moments, last } = talkOf('me', ['here']).before ?? expect.unreachable();
    expect(moments.map(({ kind }) => kind)).toEqual(['dose-effect']);
    expect(last).toBe(plain(marked));
  });

  it('says kindly that there is no message', () => {
    expect(problemOf(() => askCommand.run({ not: 'moved' }, context())).message).toBe(
      'I no longer have your message.',
    );
  });
});
