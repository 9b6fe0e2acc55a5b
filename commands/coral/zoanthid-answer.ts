import { palytoxinCleaning, palytoxinLines } from '../../core/corals/cautions.ts';
import { answer, type Answer } from '../answer.ts';

const headlines = {
  cut: 'Gloves and eye protection first, and keep them wet: palytoxin. Then cut the mat between the polyps, never through a polyp.',
  beside:
    'Mostly yes: zoanthids seldom sting each other, they grow over each other. Mind the palytoxin when you cut them.',
} as const;

const ROOM = 'Leave 2 to 5 cm (1 to 2 in) between kinds, and group them by vigour (common practice).';

/** Zoanthids beside each other, or being cut: palytoxin before all else. */
export function zoanthidAnswer(what: keyof typeof headlines): Answer {
  return answer({
    headline: headlines[what],
    steps: [
      ...(what === 'beside' ? [ROOM] : []),
      'Not in the kitchen: outside or in a room with open windows, away from food, children and pets.',
      'Cut under water or keep them wet, and let nothing spray: a face shield if water can.',
      'Keep the tools for this alone, and wash hands and table afterwards.',
      `${palytoxinCleaning.text}.`,
      ...(what === 'beside' ? [] : [ROOM]),
    ],
    dangers: [
      ...palytoxinLines(),
      'Numb lips or fingers, metallic taste, fever, cough or weakness, even hours later: medical help at once.',
    ],
    cautions: [
      'The large Palythoa kinds grow over and irritate the small ones (common practice).',
      'How much toxin a kind holds cannot be seen, and differs from colony to colony: treat all of them alike.',
    ],
    sources: ['practice', 'memory', 'CDC2015', 'Pelin2016', 'Schulz2019'],
  });
}
