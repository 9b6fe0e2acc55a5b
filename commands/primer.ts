import { z } from 'zod';
import { primer, primers } from '../core/care/primers/cards.ts';
import { primerIds } from '../core/care/primers/primer.ts';
import { MAX_MESSAGE_LENGTH } from '../core/message-length.ts';
import { say } from '../core/wording/say.ts';
import { answer, type Answer } from './answer.ts';
import { defineCommand } from './command.ts';
import { cardAnswer, openCard } from './primer/card-answer.ts';
import { subjectAnswer, wholeSubject } from './primer/subject-answer.ts';
import { subjectTitled } from './primer/titled.ts';

/** Where somebody new begins. */
const FIRST = ['cycle', 'first corals', 'acclimation', 'salinity', 'water changes', 'palytoxin'] as const;

export const primerCommand = defineCommand({
  path: ['primer'],
  summary: 'A short card on one subject, to read or to drop in a channel; the list of cards without one',
  example: '/primer card:water changes',
  options: z.strictObject({
    card: z.enum(primerIds).describe('Which card; leave it out for the list').optional(),
    about: z
      .string()
      .max(MAX_MESSAGE_LENGTH)
      .describe('A particular question, by its title or in a few words: "two tangs"')
      .optional(),
    all: z.enum(['yes']).describe('yes shows all facts of that question').optional(),
  }),
  run: ({ card, about, all }): Answer => {
    if (about !== undefined) return (all === undefined ? subjectAnswer : wholeSubject)(subjectTitled(about));
    return card === undefined ? list() : cardAnswer(primer(card));
  },
});

function list(): Answer {
  return answer({
    headline: say('primer.soManyCards', { count: primers.length }),
    table: { head: [say('primer.cardHead')], rows: primerIds.map((id) => [id]) },
    steps: [say('primer.openOne')],
    sources: ['practice'],
    next: FIRST.map(openCard),
  });
}
