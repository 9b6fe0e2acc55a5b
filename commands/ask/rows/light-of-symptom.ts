import type { Found } from '../../../core/care/symptoms/rank.ts';
import { judgedLight } from '../../../core/corals/light-verdict.ts';
import type { Frame } from '../../../core/language/frame.ts';
import type { Fact } from '../../answer.ts';
import { needOf } from '../../coral/name-light.ts';
import { coralsOf, parsOf } from './coral-said.ts';

/** The light that was read at the one coral that is spoken of, judged as that of a piece long here, and what it is a sign of. */
export function litOf(frame: Frame): { readonly facts: readonly Fact[]; readonly signs: readonly Found[] } {
  const [only, more] = coralsOf(frame);
  const [reading, another] = parsOf(frame);
  if (only === undefined || more !== undefined || reading === undefined || another !== undefined)
    return { facts: [], signs: [] };
  const need = needOf(only.entries);
  const { value, text } = reading;
  const judged = judgedLight(need, 'settled', { lowPpfd: value, ppfd: value, highPpfd: value });
  const { side, word, verdict } = judged;
  return {
    facts: [
      {
        label: `${only.name} at ${text}`,
        value: `${need.lowPpfd} to ${need.highPpfd} PAR (${need.rangeBasis}): ${word}`,
        verdict,
      },
    ],
    signs: side === 'bright' || side === 'dim' ? [{ sign: side, text: `you said: ${text}, ${word}` }] : [],
  };
}
