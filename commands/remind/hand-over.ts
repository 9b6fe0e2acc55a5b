import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { readMoment } from '../../core/words/moment.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { idOption, textOption } from '../options.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { askedZone, zoneOption } from '../zone.ts';
import { reminderFacts } from './care-plan.ts';
import { DAY_BEGINS } from './pause.ts';
import { timeFact } from './times.ts';
import { say } from '../../core/wording/say.ts';

/** Longer than any holiday. */
const MOST_MS = 366 * 86_400_000;

export const handOverCommand = defineCommand({
  path: ['remind', 'hand-over'],
  summary: 'Let someone else have your reminders, for a time, with a care plan; they accept first',
  example: '/remind hand-over to:100000000000000002 from:10 jan until:20 jan',
  private: true,
  options: z.strictObject({
    to: idOption('member', 'Who looks after the tank'),
    until: textOption('Until when: 20 jan, sunday 18:00, 2 weeks'),
    from: textOption('From when, if not now: 10 jan, friday 18:00').optional(),
    tank: textOption('Only one of your tanks', { suggest: 'tank' }).optional(),
    zone: zoneOption(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const { nowMs } = context;
    const tank = input.tank === undefined ? undefined : askedTank(keep, input.tank);
    const { zone, read } = askedZone(context, input.zone, tank);
    const scope = { nowMs, zone, usualTime: DAY_BEGINS };
    const from = input.from === undefined ? undefined : readMoment(input.from, { ...scope, field: 'from' });
    const until = readMoment(input.until, { ...scope, field: 'until' });
    const fromMs = from?.atMs ?? nowMs;
    if (until.atMs <= fromMs || until.atMs > fromMs + MOST_MS) {
      throw new Problem(say('remind.mustEndAfterBegins'), {
        field: 'until',
        given: input.until,
      });
    }
    const handOver = keep.addHandOver({ sitterId: input.to, tankId: tank?.id, fromMs, untilMs: until.atMs });
    const about = keep.reminders().filter((one) => tank === undefined || one.tankId === tank.id);
    const facts = reminderFacts(about, nowMs);
    return answer({
      headline: 'I ask them now. Until they accept, your reminders stay with you.',
      read: [
        tank === undefined ? 'all your tanks' : `your tank ${tank.name}`,
        ...read,
        ...new Set([...(from?.notes ?? []), ...until.notes]),
      ],
      facts: [
        { label: 'Sitter', value: 'asked', personId: input.to },
        timeFact('From', handOver.fromMs, zone),
        timeFact('Until', handOver.untilMs, zone),
        { label: 'Reminders handed over', value: String(facts.length) },
        ...facts,
      ],
      steps: [
        'When they accept they get a care plan: tanks, targets, last readings, reminders, and what to do first.',
        ...(facts.length === 0
          ? ['There is no reminder to hand over yet: set what is to be done, with its amounts.']
          : []),
        'Write amounts into each reminder ("feed 1 g of pellets"), and leave them your phone number.',
      ],
      next: [
        action(say('remind.takeBack'), 'remind sit', { 'hand-over': String(handOver.id), answer: 'no' }),
      ],
    });
  },
});
