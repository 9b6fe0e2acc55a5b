import { describe, expect, it } from 'vitest';
import { done, later, paused, resumed, skipped } from '../../../commands/remind/moves.ts';
import { settled, started } from '../../../commands/remind/progress.ts';
import type { Plan, Progress, Reminder } from '../../../commands/reminder.ts';
import type { Rule } from '../../../core/schedule/rule.ts';

const HOUR = 3_600_000;
/** January 2026 in UTC: day and hour. 3 January is a Saturday. */
const jan = (day: number, hour = 9): number => Date.UTC(2026, 0, day, hour);

const saturdays: Rule = { every: 'weeks', count: 1, on: [6] };
const daily: Rule = { every: 'days', count: 1 };
const after3: Rule = { every: 'after', days: 3 };
const once: Rule = { every: 'once' };

function reminder(rule: Rule, progress: Progress = {}, changes: Partial<Plan> = {}): Reminder {
  const plan: Plan = {
    text: 'floss',
    parameters: [],
    anchor: '2026-01-03 09:00',
    zone: 'UTC',
    rule,
    place: { kind: 'direct' },
    ...changes,
  };
  return { id: 1, ...plan, ...progress };
}

/** Only what is set. */
function set(progress: Progress): Progress {
  return Object.fromEntries(Object.entries(progress).filter(([, value]) => value !== undefined));
}

interface Row {
  readonly what: string;
  readonly is: Progress;
  readonly becomes: Progress;
}

describe('settled', () => {
  it.each<Row>([
    {
      what: 'goes on to the next of a repeat',
      is: settled(reminder(saturdays, { nextMs: jan(3) }), jan(3), jan(3)),
      becomes: { nextMs: jan(10) },
    },
    {
      what: 'sends one late message after three weeks away, and not one each',
      is: settled(reminder(saturdays, { nextMs: jan(3) }), jan(3), jan(24, 10)),
      becomes: { nextMs: jan(31) },
    },
    {
      what: 'never goes back when the clock does',
      is: settled(reminder(saturdays, { nextMs: jan(3) }), jan(3), jan(3) - HOUR),
      becomes: { nextMs: jan(10) },
    },
    {
      what: 'ends what comes once',
      is: settled(reminder(once, { nextMs: jan(3) }), jan(3), jan(3)),
      becomes: {},
    },
    {
      what: 'waits to be done before it counts the days',
      is: settled(reminder(after3, { nextMs: jan(3) }), jan(3), jan(3)),
      becomes: {},
    },
    {
      what: 'ends with the last of three times',
      is: settled(reminder(daily, { nextMs: jan(5) }, { times: 3 }), jan(5), jan(5)),
      becomes: {},
    },
    {
      what: 'goes on before the last of three times',
      is: settled(reminder(daily, { nextMs: jan(4) }, { times: 3 }), jan(4), jan(4)),
      becomes: { nextMs: jan(5) },
    },
    {
      what: 'keeps the next when "later" is sent',
      is: settled(reminder(saturdays, { nextMs: jan(10), againMs: jan(3, 12) }), jan(3, 12), jan(3, 12)),
      becomes: { nextMs: jan(10) },
    },
    {
      what: 'keeps a "later" that is still to come',
      is: settled(reminder(daily, { nextMs: jan(4), againMs: jan(4, 20) }), jan(4), jan(4)),
      becomes: { nextMs: jan(5), againMs: jan(4, 20) },
    },
    {
      what: 'leaps a pause with an end',
      is: settled(
        reminder(saturdays, { nextMs: jan(3), pause: { fromMs: jan(9), untilMs: jan(25) } }),
        jan(3),
        jan(3),
      ),
      becomes: { nextMs: jan(31), pause: { fromMs: jan(9), untilMs: jan(25) } },
    },
    {
      what: 'stays where it is in a pause without an end',
      is: settled(reminder(saturdays, { nextMs: jan(3), pause: { fromMs: jan(9) } }), jan(3), jan(3)),
      becomes: { nextMs: jan(10), pause: { fromMs: jan(9) } },
    },
    {
      what: 'forgets a pause that is over',
      is: settled(
        reminder(saturdays, { nextMs: jan(10), pause: { fromMs: jan(4), untilMs: jan(6) } }),
        jan(10),
        jan(10),
      ),
      becomes: { nextMs: jan(17) },
    },
  ])('$what', ({ is, becomes }) => expect(set(is)).toEqual(becomes));
});

describe('done', () => {
  it.each<Row & { readonly anchor?: string }>([
    {
      what: 'late leaves the next where it is, and ends a "later"',
      ...moved(
        done(reminder(saturdays, { nextMs: jan(10), againMs: jan(4) }), undefined, jan(3, 15), jan(3, 15)),
      ),
      becomes: { nextMs: jan(10), lastDoneMs: jan(3, 15) },
    },
    {
      what: 'early leaves the next one out',
      ...moved(done(reminder(saturdays, { nextMs: jan(10) }), jan(10), jan(8), jan(8))),
      becomes: { nextMs: jan(17), lastDoneMs: jan(8) },
    },
    {
      what: 'of what comes once, early, ends it',
      ...moved(done(reminder(once, { nextMs: jan(3) }), jan(3), jan(2), jan(2))),
      becomes: { lastDoneMs: jan(2) },
    },
    {
      what: 'moves the anchor of "3 days after I last did it"',
      ...moved(done(reminder(after3), undefined, jan(5, 20), jan(5, 20))),
      becomes: { nextMs: jan(8), lastDoneMs: jan(5, 20) },
      anchor: '2026-01-08 09:00',
    },
    {
      what: 'counts the days from when it was done, not from when that was said',
      ...moved(done(reminder(after3), undefined, jan(4), jan(6))),
      becomes: { nextMs: jan(7), lastDoneMs: jan(4) },
      anchor: '2026-01-07 09:00',
    },
    {
      what: 'in a pause puts the next of what comes once to its end',
      ...moved(
        done(reminder(after3, { pause: { fromMs: jan(4), untilMs: jan(20) } }), undefined, jan(5), jan(5)),
      ),
      becomes: { againMs: jan(20), lastDoneMs: jan(5), pause: { fromMs: jan(4), untilMs: jan(20) } },
      anchor: '2026-01-08 09:00',
    },
    {
      what: 'never goes back in time',
      ...moved(done(reminder(saturdays, { nextMs: jan(10), lastDoneMs: jan(5) }), undefined, jan(4), jan(6))),
      becomes: { nextMs: jan(10), lastDoneMs: jan(5) },
    },
    {
      what: 'does not start what is stopped',
      ...moved(done(reminder(saturdays, { trouble: 'x' }), undefined, jan(3), jan(3))),
      becomes: { lastDoneMs: jan(3), trouble: 'x' },
    },
    {
      what: 'of the last time ends it',
      ...moved(done(reminder(daily, { nextMs: jan(5) }, { times: 3 }), jan(5), jan(4, 20), jan(4, 20))),
      becomes: { lastDoneMs: jan(4, 20) },
    },
  ])('$what', ({ is, becomes, anchor = '2026-01-03 09:00', ...rest }) => {
    expect(set(is)).toEqual(becomes);
    expect((rest as { readonly at?: string }).at).toBe(anchor);
  });
});

function moved({ anchor, progress }: ReturnType<typeof done>): Pick<Row, 'is'> & { readonly at: string } {
  return { is: progress, at: anchor };
}

describe('skip, later, pause and resume', () => {
  it.each<Row>([
    {
      what: 'a skip of one sent leaves the next',
      is: skipped(reminder(saturdays, { nextMs: jan(10), againMs: jan(4) }), undefined, jan(3, 10)).progress,
      becomes: { nextMs: jan(10) },
    },
    {
      what: 'a skip of one to come leaves it out',
      is: skipped(reminder(saturdays, { nextMs: jan(10) }), jan(10), jan(8)).progress,
      becomes: { nextMs: jan(17) },
    },
    {
      what: 'a skip of "3 days after" counts from today',
      is: skipped(reminder(after3), undefined, jan(5)).progress,
      becomes: { nextMs: jan(8) },
    },
    {
      what: 'later comes again and leaves the next',
      is: later(reminder(saturdays, { nextMs: jan(10) }), undefined, jan(3, 12), jan(3, 9)),
      becomes: { nextMs: jan(10), againMs: jan(3, 12) },
    },
    {
      what: 'later again takes the place of the first later',
      is: later(
        reminder(saturdays, { nextMs: jan(10), againMs: jan(3, 12) }),
        undefined,
        jan(3, 20),
        jan(3, 13),
      ),
      becomes: { nextMs: jan(10), againMs: jan(3, 20) },
    },
    {
      what: 'later before its time moves that one only',
      is: later(reminder(saturdays, { nextMs: jan(10) }), jan(10), jan(11), jan(9)),
      becomes: { nextMs: jan(17), againMs: jan(11) },
    },
    {
      what: 'a pause leaps the repeats in it',
      is: paused(reminder(saturdays, { nextMs: jan(3) }), { fromMs: jan(2), untilMs: jan(18, 0) }),
      becomes: { nextMs: jan(24), pause: { fromMs: jan(2), untilMs: jan(18, 0) } },
    },
    {
      what: 'a pause lets come what is due before it',
      is: paused(reminder(saturdays, { nextMs: jan(3) }), { fromMs: jan(5), untilMs: jan(18, 0) }),
      becomes: { nextMs: jan(3), pause: { fromMs: jan(5), untilMs: jan(18, 0) } },
    },
    {
      what: 'a pause puts off what comes once',
      is: paused(reminder(once, { nextMs: jan(3) }), { fromMs: jan(2), untilMs: jan(18, 0) }),
      becomes: { againMs: jan(18, 0), pause: { fromMs: jan(2), untilMs: jan(18, 0) } },
    },
    {
      what: 'a pause over all times ends them',
      is: paused(reminder(daily, { nextMs: jan(3) }, { times: 3 }), { fromMs: jan(2), untilMs: jan(9) }),
      becomes: { pause: { fromMs: jan(2), untilMs: jan(9) } },
    },
    {
      what: 'resumed early, a repeat comes at its next time',
      is: resumed(
        reminder(saturdays, { nextMs: jan(31), pause: { fromMs: jan(2), untilMs: jan(25) } }),
        jan(12),
      ),
      becomes: { nextMs: jan(17) },
    },
    {
      what: 'resumed early, what comes once comes at its time',
      is: resumed(reminder(once, { againMs: jan(18), pause: { fromMs: jan(1), untilMs: jan(18) } }), jan(2)),
      becomes: { nextMs: jan(3) },
    },
    {
      what: 'resumed late, what comes once comes at once',
      is: resumed(reminder(once, { nextMs: jan(3), pause: { fromMs: jan(2) } }), jan(8)),
      becomes: { againMs: jan(8) },
    },
    {
      what: 'resumed, what was not delivered comes at once',
      is: resumed(reminder(once, { trouble: 'closed' }), jan(8)),
      becomes: { againMs: jan(8) },
    },
    {
      what: 'resumed, what was done stays done',
      is: resumed(reminder(once, { lastDoneMs: jan(3, 10), pause: { fromMs: jan(4) } }), jan(8)),
      becomes: { lastDoneMs: jan(3, 10) },
    },
  ])('$what', ({ is, becomes }) => expect(set(is)).toEqual(becomes));
});

describe('started', () => {
  it('begins with the first time later than now, of an anchor in the past too', () => {
    expect(started(reminder(saturdays), jan(12))).toEqual({ nextMs: jan(17) });
    expect(started(reminder(daily, {}, { times: 3 }), jan(12))).toEqual({ nextMs: undefined });
  });
});
