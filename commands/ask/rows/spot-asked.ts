import type { Frame } from '../../../core/language/frame.ts';
import { classesMet } from '../../../core/language/beside.ts';
import { met } from '../../../core/language/met.ts';
import type { Scanned, Token } from '../../../core/language/tokens.ts';

const ENDS: ReadonlySet<string> = new Set(['.', '!', '?', ';', ',', 'and', 'but', 'then']);
/** In a clause that asks or wishes, the ground is that of what is asked for, whatever coral stands beside. */
const ASKS = ['manner.askWhich', 'manner.wish', 'manner.may', 'manner.askOk', 'manner.askBest'] as const;
const ASKS_WORDS: ReadonlySet<string> = new Set([
  'can',
  'could',
  'fit',
  'fits',
  'else',
  'room',
  'go',
  'goes',
]);

/** Rock or sand asked for; where both are spoken of, or a coral is told with its ground, it is not that of what is asked. */
export function groundOf({ reading: { scanned } }: Frame): 'rock' | 'sand' | undefined {
  if (met(scanned, 'places.rock') && met(scanned, 'places.sand', 'places.sandBed')) return undefined;
  const asked = clausesOf(scanned).filter((clause) => asks(clause) || !clause.some(isCoral));
  const found = new Set(asked.flatMap((clause) => [...classesMet(clause)]));
  if (found.has('places.rock')) return 'rock';
  return found.has('places.sand') || found.has('places.sandBed') ? 'sand' : undefined;
}

/** "lights kinda mid", "a middling lamp": what stands in the middle is the light. */
export function isMiddleLight({ reading: { scanned } }: Frame): boolean {
  return clausesOf(scanned).some((clause) => {
    const found = classesMet(clause);
    const isMiddle = found.has('places.middle');
    return isMiddle && ['places.bright', 'gear.lamp', 'gear.ledLamp'].some((name) => found.has(name));
  });
}

function asks(clause: readonly Token[]): boolean {
  const found = classesMet(clause);
  return ASKS.some((name) => found.has(name)) || clause.some(({ word }) => ASKS_WORDS.has(word));
}

function isCoral({ name }: Token): boolean {
  return name?.class === 'coral';
}

function clausesOf({ tokens }: Scanned): readonly (readonly Token[])[] {
  const ends = tokens.flatMap(({ word }, at) => (ENDS.has(word) ? [at + 1] : []));
  return [...ends, tokens.length].map((end, at) => tokens.slice(ends[at - 1] ?? 0, end));
}
