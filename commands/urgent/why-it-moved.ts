import { met } from '../../core/language/met.ts';
import type { Scanned } from '../../core/language/tokens.ts';
import type { Answer, Fact } from '../answer.ts';

const UNSURE: Fact = {
  label: 'why it moved',
  value:
    'it cannot be said for certain. Anemones wander after a change in light, flow or food, or when they have not settled yet',
};

const LAMP: Fact = {
  label: 'the lamp',
  value:
    'a cleaned lamp is brighter at once, so it is one likely cause: dim it and come back by about 10 % a week',
};

/** The card of an anemone in a pump with why it went there. Common practice, no source. */
export function withWhyItMoved(card: Answer, scanned: Scanned): Answer {
  const isCleaned = met(scanned, 'deeds.cleans') && met(scanned, 'gear.lamp');
  return { ...card, facts: [...card.facts, UNSURE, ...(isCleaned ? [LAMP] : [])] };
}
