import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import type { HandOver } from '../reminder.ts';
import { keepOf } from '../tank/asked-tank.ts';
import { knownZone } from '../zone.ts';
import { timeFact } from './times.ts';
import { say } from '../../core/wording/say.ts';

export const sitCommand = defineCommand({
  path: ['remind', 'sit'],
  summary: 'Accept or end looking after a tank, handed over by someone, or take yours back',
  example: '/remind sit hand-over:1 answer:yes',
  private: true,
  options: z.strictObject({
    'hand-over': z.int().min(1).max(1_000_000_000).describe('Its number, from the message or /remind list'),
    answer: z.enum(['yes', 'no']).describe('yes accepts; no declines or ends it'),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const id = input['hand-over'];
    const found = keep.handOvers().find((one) => one.id === id);
    if (found === undefined) throw new Problem(say('remind.thereNoSuchHand'), { field: 'hand-over' });
    const zone = knownZone(context) ?? 'UTC';
    if (found.state !== 'asked' && found.state !== 'accepted') return told(found, ENDED[found.state], zone);
    const answered = keep.answerHandOver(id, input.answer === 'yes');
    if (answered !== undefined) {
      return told(
        answered,
        input.answer === 'yes'
          ? 'You have accepted. The care plan comes in a direct message, and the reminders when they are due.'
          : 'You have declined. Its owner is told.',
        zone,
      );
    }
    if (input.answer === 'no') {
      keep.endHandOver(id);
      return told(
        found,
        'It is ended: the reminders are with their owner again, and both of you are told.',
        zone,
      );
    }
    return told(found, STANDING[found.state], zone);
  },
});

const ENDED = {
  declined: 'That was declined.',
  over: 'That is over: the reminders are with their owner.',
} as const;

const STANDING = {
  asked: 'Only the sitter can accept that. They have not answered yet.',
  accepted: 'That is accepted already.',
} as const;

function told(handOver: HandOver, headline: string, zone: string): Answer {
  const { fromMs, untilMs } = handOver;
  return answer({ headline, facts: [timeFact('From', fromMs, zone), timeFact('Until', untilMs, zone)] });
}
