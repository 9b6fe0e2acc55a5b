import type { CoralEntry } from '../../core/corals/entry.ts';
import { answer, type Answer } from '../answer.ts';
import { feedingLine, lightLine } from './about-lines.ts';
import { fullName } from './asked-kind.ts';
import { hazardCautions, hazardLines } from './hazard-lines.ts';

/** What a coral eats, and how it is fed. */
export function feedingAnswer(name: string, entry: CoralEntry): Answer {
  const line = feedingLine(entry);
  const hazards = hazardLines([entry]);
  return answer({
    headline: `${entry.names.common[0]}: ${line.value}.`,
    read: [`${name} as ${fullName(entry)}`],
    facts: [lightLine(entry)],
    steps: [
      'Pumps off or low while it takes the food, and lift out what is left after some minutes.',
      'More food is more nitrate and phosphate: /coral feed says how much at most.',
    ],
    cautions: hazardCautions(hazards),
  });
}
