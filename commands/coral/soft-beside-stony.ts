import { readIn } from '../../core/corals/basis-words.ts';
import { answer, type Answer } from '../answer.ts';

/** Soft and stony corals: one tank, not one rock. */
export function softBesideStony(): Answer {
  return answer({
    headline:
      'One tank, not one rock: keep 10 cm or more between soft and stony corals, and run activated carbon. Many keep both, but leathers put chemicals into the water.',
    facts: [
      {
        label: 'what was seen',
        value: `within 10 cm of a soft coral most corals were interacting to the harm of one or both (${readIn('Griffith1997')}); in contact the soft side usually loses (${readIn('Dai1990')})`,
      },
    ],
    steps: [
      'Put the soft ones downstream, and change the carbon often.',
      'Stony corals that stay shut, pale or stop growing beside large leathers: more room, fresh carbon, a water change.',
      'Ask for a pair: "can a toadstool be near my acropora".',
    ],
    sources: ['practice'],
  });
}
