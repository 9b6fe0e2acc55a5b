import { z } from 'zod';
import { sources, type SourceCode } from '../../sources.ts';

const codes = Object.keys(sources) as [SourceCode, ...SourceCode[]];
/** Most letters of a fact, its label with it. Own choice, as the other limits are. */
const FACT = 110;
const fact = z
  .tuple([z.string().min(1).max(60), z.string().min(1)])
  .refine(([label, value]) => label.length + value.length <= FACT);

/**
 * The answer to one particular question below a kind: "one heater or two" is below `equipment`. Which card a message means is
 * learnt of the sentences that bear its label. The limits are those of an answer that fits a phone; of the facts three are
 * shown at once, so that there may be some for every animal or size that is asked about.
 */
export const subjectCardSchema = z.strictObject({
  /** The label of the sentences, below the kind. */
  card: z.string().min(2).max(30),
  /** On a button. */
  title: z.string().min(3).max(40),
  headline: z.string().min(10).max(140),
  steps: z.array(z.string().min(3).max(110)).max(3).default([]),
  /** Facts with their numbers. */
  points: z.array(fact).max(6).default([]),
  /** Hazards to people and animals. */
  cautions: z.array(z.string().min(3).max(120)).max(2).default([]),
  sources: z.array(z.enum(codes)).min(1),
});

export type SubjectCard = z.infer<typeof subjectCardSchema>;
