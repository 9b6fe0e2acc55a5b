import { z } from 'zod';
import { primer, primers } from '../core/care/primers/cards.ts';
import { primerIds } from '../core/care/primers/primer.ts';
import { answer, type Answer } from './answer.ts';
import { defineCommand } from './command.ts';
import { cardAnswer, openCard } from './primer/card-answer.ts';

/** Where somebody new begins. */
const FIRST = ['cycle', 'first corals', 'acclimation', 'salinity', 'water changes', 'palytoxin'] as const;

export const primerCommand = defineCommand({
  path: ['primer'],
  summary: 'A short card on one subject to read or to drop in a channel; the list of cards without one',
  example: '/primer card:water changes',
  options: z.strictObject({
    card: z.enum(primerIds).describe('Which card; leave it out for the list').optional(),
  }),
  run: ({ card }): Answer => (card === undefined ? list() : cardAnswer(primer(card))),
});

function list(): Answer {
  return answer({
    headline: `There are ${primers.length} cards: ${primerIds.join(', ')}.`,
    steps: ['Open one with /primer and its name, or ask in plain words: "what is limewater", "explain PAR".'],
    sources: ['practice'],
    next: FIRST.map(openCard),
  });
}
