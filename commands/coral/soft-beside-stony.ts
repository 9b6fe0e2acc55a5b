import { readIn } from '../../core/corals/basis-words.ts';
import { answer, type Answer } from '../answer.ts';

/** Soft and stony corals: one tank, not one rock. */
export function softBesideStony(): Answer {
  return answer({
    headline:
      'One tank, not one rock: keep 10 cm or more between soft and stony corals, and run activated carbon.',
    facts: [
      {
        label: 'what was seen',
        value: `within 10 cm most corals harmed one another (${readIn('Griffith1997')})`,
      },
      { label: 'in contact', value: `the soft side usually loses (${readIn('Dai1990')})` },
      { label: 'leathers', value: 'put chemicals into the water; many keep both all the same' },
    ],
    steps: [
      'Put the soft ones downstream, and change the carbon often.',
      'Stony ones that stay shut, pale or stop growing near leathers: more room, fresh carbon, a water change.',
      'Ask for a pair: "can a toadstool be near my acropora".',
    ],
    sources: ['practice'],
  });
}
