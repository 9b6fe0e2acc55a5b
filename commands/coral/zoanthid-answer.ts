import { palytoxinCaution, palytoxinCleaning } from '../../core/corals/cautions.ts';
import { answer, type Answer } from '../answer.ts';

const headlines = {
  cut: 'Gloves and eye protection first, and keep them wet: zoanthids may hold palytoxin. Then cut through the mat between the polyps, not through a polyp.',
  beside:
    'Mostly yes: zoanthids seldom sting each other, they grow over each other. Mind the palytoxin first when you cut them.',
} as const;

/** Zoanthids beside each other, or being cut: palytoxin before all else. */
export function zoanthidAnswer(what: keyof typeof headlines): Answer {
  return answer({
    headline: headlines[what],
    steps: [
      'Not in the kitchen: outside or in a room with open windows, away from food, children and pets.',
      'Gloves and eye protection before you touch them, and a face shield if water can spray. Cut under water or keep them wet, and let nothing spray.',
      'Keep the tools for this alone, and wash hands and table afterwards.',
      `${palytoxinCleaning.text}.`,
      'Leave 2 to 5 cm (1 to 2 in) between kinds, and group them by vigour: the large Palythoa kinds grow over and irritate the small ones (common practice).',
    ],
    cautions: [
      `${palytoxinCaution.text}.`,
      'Numb lips or fingers, a metallic taste, fever, cough or weakness after handling them: get medical help at once and say palytoxin. It can come hours later.',
      'How much toxin a kind holds cannot be seen, and differs from colony to colony: treat all of them alike.',
    ],
    sources: ['practice', 'memory', 'CDC2015', 'Pelin2016', 'Schulz2019'],
  });
}
