import { anyOf, saidIn, type Way } from '../said.ts';
import type { UrgentId } from './cards.ts';
import { mainsWays } from './ways/mains.ts';
import { poisonWays } from './ways/poison.ts';
import { waterWays } from './ways/water.ts';

/** Plans, purchases and what is over are no emergency. */
const NOT = anyOf([
  'remind',
  'how (?:do i|to|can i|would i) (?:prevent|avoid|stop)',
  'prevent\\w*',
  'last (?:year|month|summer|winter|time)',
  'years? ago',
  'after the last',
  '(?:which|what|what size|best) (?:heater|magnet|cleaner|generator|spray|pump|doser|chiller|breaker)',
]);

/** How members say each emergency. A hurt person and an anemone in a named pump are heard elsewhere. */
const ways = { ...mainsWays, ...poisonWays, ...waterWays } as const satisfies Partial<
  Record<UrgentId, readonly Way[]>
>;

/** Those that can kill people first, then those that kill a tank soonest. */
const order = [
  'fire or sparks',
  'flood',
  'out of the water',
  'burst heater',
  'bleach or spray',
  'shredded anemone',
  'oxygen loss',
  'power cut',
  'overdose',
  'salinity crash',
  'overheating',
  'cold water',
  'ammonia',
] as const satisfies readonly (keyof typeof ways)[];

const tests = order.map((id) => ({ id, test: saidIn(ways[id]) }));

/** The emergency that a cleaned text speaks of, the most dangerous first; undefined for none. */
export function urgentIn(text: string): UrgentId | undefined {
  return NOT(text) ? undefined : tests.find(({ test }) => test(text))?.id;
}
