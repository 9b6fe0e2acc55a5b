import { met } from '../../core/language/met.ts';
import type { Scanned } from '../../core/language/tokens.ts';
import type { Answer, Fact } from '../answer.ts';

const UNSURE: Fact = {
  label: 'why it moved',
  value: 'it cannot be said for certain: anemones wander after a change in light, flow or food, or when new',
};

const LAMP: Fact = {
  label: 'the lamp',
  value: 'a cleaned one is brighter at once, one likely cause: dim it, come back by about 10 % a week',
};

/** The card of an anemone in a pump with why it went there. Common practice, no source. */
export function withWhyItMoved(card: Answer, scanned: Scanned): Answer {
  const isCleaned = met(scanned, 'deeds.cleans') && met(scanned, 'gear.lamp');
  return { ...card, facts: [...card.facts, UNSURE, ...(isCleaned ? [LAMP] : [])] };
}
