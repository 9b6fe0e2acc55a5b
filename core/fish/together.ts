import { span, toUnit } from '../quantity/format.ts';
import type { FishKind } from './fish-kinds.ts';

/** Some of one kind; how many is not always said. */
export interface Some {
  readonly kind: FishKind;
  readonly count: number | undefined;
}

/** Water of one small fish of 5 to 8 cm, L, least and most. Common practice, no source. */
const A_FISH_L = { least: 20, most: 30 } as const;
/** Two of one shape that want the same caves fight in less than this, L. Common practice, no source. */
const RIVALS_L = 250;
const RIVALS: readonly (readonly [string, string])[] = [
  ['gramma', 'dottyback'],
  ['six-line wrasse', 'wrasse'],
];

/**
 * What speaks against fish of these kinds in so much water, the worst first; empty where nothing known does. Check: two
 * clowns, four firefish, a gramma and a six-line in 150 L: three too many firefish, the six-line, and eight fish where
 * five to seven go. Common practice, no source.
 */
export function againstThem(fish: readonly Some[], litres: number): readonly string[] {
  const small = fish.filter(({ kind }) => litres < kind.leastL * NEARLY);
  const hunters = fish.filter(({ kind }) => kind.isHunter);
  const apart = fish.filter(({ kind }) => kind.isApart);
  const prey = fish.filter(({ kind }) => kind.isHunter === undefined);
  const bullies = fish.filter(({ kind }) => litres < (kind.bulliesBelowL ?? 0) * NEARLY);
  const shy = fish.filter(({ kind }) => kind.isShy);
  const all = fish.reduce((sum, { count = 1 }) => sum + count, 0);
  const [most, least] = [roomFor(litres, A_FISH_L.least), roomFor(litres, A_FISH_L.most)];
  return [
    ...small.map(({ kind }) => `a ${kind.name} wants ${inLitres(kind.leastL)} or more`),
    ...(prey.length > 0 ? hunters.map(({ kind }) => `a ${kind.name} eats what fits its mouth`) : []),
    ...(fish.length > 1 ? apart.map(({ kind }) => `a ${kind.name} starves beside quicker fish`) : []),
    ...bullies.flatMap(({ kind }) =>
      shy.length === 0 ? [] : [`the ${kind.name} bullies ${shy.map((one) => one.kind.name).join(', ')}`],
    ),
    ...fish.flatMap((some) => tooMany(some, litres)),
    ...RIVALS.filter(
      (pair) => litres < RIVALS_L && pair.every((name) => fish.some(({ kind }) => kind.name === name)),
    ).map(([one, other]) => `${one} and ${other} want the same place`),
    ...(all > most ? [`${all} fish, where about ${span(`${least}`, `${most}`)} small ones go`] : []),
  ];
}

function roomFor(litres: number, aFishL: number): number {
  return Math.max(1, Math.floor(litres / aFishL));
}

/** A tank a little below a round figure is not judged too small: this share of it. Own choice. */
const NEARLY = 0.9;

function tooMany(
  { kind: { name, most, oneMoreFromL = Infinity }, count = 1 }: Some,
  litres: number,
): readonly string[] {
  if (most === undefined) return [];
  const here = most + (litres >= oneMoreFromL ? 1 : 0);
  return count <= here ? [] : [`at most ${here === 1 ? 'one' : here} ${name}, not ${count}`];
}

/** Figures of practice are as round as this, L and gal; a small tank is told to the gallon. Own choices. */
const ROUND_L = 5;
const FINE_GAL = 50;

/** "150 L (40 gal)". */
export function inLitres(litres: number): string {
  const gal = toUnit('volume', litres, 'US gal');
  const whole = gal < FINE_GAL ? Math.round(gal) : Math.round(gal / ROUND_L) * ROUND_L;
  return `${Math.round(litres / ROUND_L) * ROUND_L} L (${whole} gal)`;
}
