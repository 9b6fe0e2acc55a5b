import { describe, expect, it } from 'vitest';
import { remindRows } from '../../../../commands/ask/rows/remind.ts';
import { rowAnswer } from './asked.ts';
import { kept } from './kept.ts';

/** Zones and their clocks: IANA time zone database. */
describe('a reminder set in words', () => {
  it.each([
    ['remind me friday 8pm', /look at the tank, once, on Friday 4 December 2026 at 20:00 \(Europe\/Berlin\)/],
    ['remind me tomorrow at 8 to test alk', /test alkalinity, once, on Tuesday 1 December 2026 at 08:00/],
    ['remind me at 8pm lisbon time to feed the tank', /feed the tank, once, .* at 20:00 \(Europe\/Lisbon\)/],
    ['could you remind me tomorrow 7am uk time to top off', /top off, once, .* at 07:00 \(Europe\/London\)/],
    [
      'can you remind me every other sunday to Change the Floss please',
      /Change the Floss, every 2 weeks on Sunday/,
    ],
    [
      'ping me on saturday evening at 7 about the skimmer cup',
      /the skimmer cup, once, on Saturday .* at 19:00/,
    ],
    [
      'set a reminder in half an hour to switch the pump back on',
      /switch the pump back on, once, .* at 17:00/,
    ],
    ['remind me to test calcium and magnesium every two weeks', /test calcium and magnesium, every 2 weeks/],
  ])('%s', (text, first) => expect(kept(remindRows).says('remind', text)?.headline).toMatch(first));

  it('says what it took for granted', () =>
    expect(kept(remindRows).says('remind', 'remind me tomorrow at 8 to feed')?.read).toContain(
      '8 read as 08:00',
    ));

  it('keeps two that are joined by "and" apart', () => {
    const text = 'remind me to clean the pumps every first sunday of the month and test ca every 2 weeks';
    expect(kept(remindRows).says('remind', text)?.headline).toMatch(/^I read 2 reminders/);
  });
});

function two() {
  const all = kept(remindRows);
  all.says('remind', 'remind me every day at 9am to test alk');
  all.says('remind', 'remind me every sunday at 10am to change the floss');
  return all;
}

describe('reminders there are', () => {
  it('are listed', () =>
    expect(two().says('remind', 'what are my reminders')?.headline).toMatch(/^2 reminders\. Next: test alk/));

  it('stop by a word of their text', () => {
    const { says, keep } = two();
    expect(says('remind', 'cancel the floss reminder')?.headline).toBe('Removed: change the floss.');
    expect(keep.reminders().map(({ text }) => text)).toEqual(['test alkalinity']);
  });

  it('"that" is the one that came in the last day', () => {
    const { says, wait } = two();
    wait(1);
    expect(says('remind', 'stop reminding me of that')?.headline).toBe('Removed: test alkalinity.');
  });

  it('"that" is the one that was just set', () => {
    const { says } = two();
    const before = 'remind me every sunday at 10am to change the floss';
    expect(says('remind', 'stop reminding me about that', before)?.headline).toBe(
      'Removed: change the floss.',
    );
  });

  it('asks which where nothing tells, and removes none', () => {
    const { says, keep } = two();
    const asked = says('remind', 'please stop reminding me of that');
    expect(asked?.headline).toBe('Which of them?');
    expect(asked?.next).toHaveLength(2);
    expect(keep.reminders()).toHaveLength(2);
  });

  it('can be moved, paused and resumed', () => {
    const { says } = two();
    expect(says('remind', 'move the alk test to monday 9am')?.headline).toMatch(
      /^Changed reminder 1: .* Monday/,
    );
    expect(says('remind', 'pause all reminders until next monday')?.headline).toBe(
      'All 2 reminders are paused.',
    );
    expect(says('remind', 'resume my reminders')?.headline).toBe('2 reminders go on.');
  });
});

describe('a border to be told of', () => {
  it.each([
    ['tell me if nitrate goes over 20', 'Watched for Reef: nitrate over 20 mg/L.'],
    ['let me know when alk drops below 7', 'Watched for Reef: alkalinity under 7 dKH.'],
    ['ping me if kh gets under 7.5 or over 9', 'Watched for Reef: alkalinity over 9 dKH or under 7.5 dKH.'],
    ['warn me if my temp goes above 27.5', 'Watched for Reef: temperature over 27.5 °C.'],
  ])('%s', (text, headline) => {
    const given = kept(remindRows).says('remind', text);
    expect(given?.headline).toBe(headline);
    expect(given?.steps.join(' ')).toMatch(/only see what is logged/);
  });

  it('is listed and ended in words', () => {
    const { says } = kept(remindRows);
    says('remind', 'tell me if nitrate goes over 20');
    expect(says('remind', 'what are you watching for me')?.headline).toBe('Watched for Reef: nitrate.');
    expect(says('remind', 'stop watching nitrate')?.headline).toBe('I no longer watch nitrate for Reef.');
  });
});

describe('where others read', () => {
  it.each([
    ['stop nagging me about the filter sock', 'remind remove', /To stop one.*Nothing is stopped yet/],
    ['quit nagging me about filter socks', 'remind remove', /To stop one/],
    ['no more pings about the skimmer cup please', 'remind remove', /To stop one/],
    ['stop the feeding alarm plz', 'remind remove', /To stop one/],
    ['pause my reminders until sunday', 'remind pause', /To pause them/],
    ['stop warning me about nitrate', 'log watch', /Stop watching it/],
    ['tell me if nitrate goes over 20', 'log watch', /nothing of yours is shown or changed/],
  ] as const)('%s', (text, command, headline) => {
    const given = rowAnswer(remindRows, 'remind', text);
    expect(given?.headline).toMatch(headline);
    expect(`${given?.headline} ${given?.steps.join()}`).toContain('direct message');
    expect(given?.next[0]?.command).toBe(command);
  });

  it('a wish for a new one is answered with how to set it', () =>
    expect(rowAnswer(remindRows, 'remind', 'remind me to feed tomorrow at 8')?.headline).toContain(
      'set it with',
    ));
});
