import { z } from 'zod';
import hearsay from './hearsay.json' with { type: 'json' };
import { subjectCardSchema, type SubjectCard } from './subject-card.ts';

/** What is known of rules that are often passed on and that no sum can judge, with the verdict in the headline. */
const cards = z.array(subjectCardSchema).parse(hearsay);

export function hearsayCard(label: string): SubjectCard | undefined {
  return cards.find(({ card }) => card === label);
}
