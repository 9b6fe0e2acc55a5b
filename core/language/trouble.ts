import { classesIn } from './lexicon/classes.ts';
import type { Scanned } from './tokens.ts';

/** Classes by which something is told to be wrong with what lives in the tank, or with its water. */
const TROUBLE: ReadonlySet<string> = new Set([
  'lives.dies',
  'lives.melts',
  'lives.rots',
  'lives.sheds',
  'lives.bleaches',
  'lives.browns',
  'lives.closes',
  'lives.shrinks',
  'lives.stretches',
  'lives.recedes',
  'lives.peels',
  'lives.slimes',
  'lives.eaten',
  'lives.fights',
  'lives.gasps',
  'lives.scratches',
  'lives.listless',
  'lives.refuses',
  'lives.stings',
  'lives.sucked',
  'looks.slime',
  'looks.film',
  'looks.dead',
  'events.cloudy',
  'events.foams',
  'events.smells',
  'events.mishap',
  'body.sick',
]);
/** Classes that tell of trouble where something alive is spoken of: "is 12 bad?" does not, "my torch looks bad" does. */
const LOOKS: ReadonlySet<string> = new Set([
  'looks.bad',
  'looks.weird',
  'looks.worse',
  'looks.pale',
  'looks.hairy',
  'looks.ugly',
  'looks.dull',
]);
const ALIVE = ['animals.', 'corals.', 'fish.'] as const;
/** Words before a trouble that say it is absent: "no algae", "nothing died", "not bleached". Own choice. */
const NEAR = 2;

/** The first words of a message that tell of trouble, and are not denied; undefined where none do. */
export function troubleTold({ tokens, names }: Scanned): string | undefined {
  const classes = classesIn(tokens.map(({ word }) => word));
  const isAlive =
    names.some((name) => name.class === 'coral') ||
    classes.flat().some((name) => ALIVE.some((domain) => name.startsWith(domain)));
  const at = classes.findIndex(
    (found, place) =>
      found.some((name) => TROUBLE.has(name) || (isAlive && LOOKS.has(name))) &&
      !classes.slice(Math.max(0, place - NEAR), place).some((before) => before.includes('manner.negation')),
  );
  return at < 0 ? undefined : tokens[at]?.word;
}
