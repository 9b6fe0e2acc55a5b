import { z } from 'zod';
import { sources, type SourceCode } from '../../sources.ts';

const codes = Object.keys(sources) as [SourceCode, ...SourceCode[]];
const line = z.string().min(3).max(220);

/**
 * The answer to one particular question below a kind: "one heater or two" is below `equipment`. Which card a message means is
 * learnt of the sentences that bear its label. Limits: a headline fits three lines of a phone, a button one.
 */
export const subjectCardSchema = z.strictObject({
  /** The label of the sentences, below the kind. */
  card: z.string().min(2).max(30),
  /** On a button. */
  title: z.string().min(3).max(40),
  headline: z.string().min(10).max(210),
  steps: z.array(line).max(6).default([]),
  /** Facts with their numbers. */
  points: z
    .array(z.tuple([z.string().min(1).max(60), z.string().min(1).max(220)]))
    .max(6)
    .default([]),
  /** Hazards to people and animals. */
  cautions: z.array(line).max(4).default([]),
  sources: z.array(z.enum(codes)).min(1),
});

export type SubjectCard = z.infer<typeof subjectCardSchema>;
