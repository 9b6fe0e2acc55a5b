import { hearsayCard } from '../../../core/care/subjects/hearsay.ts';
import { subjectCard } from '../../../core/care/subjects/cards.ts';
import type { SubjectCard } from '../../../core/care/subjects/subject-card.ts';
import type { Frame } from '../../../core/language/frame.ts';
import type { Kind } from '../../../core/language/kinds.ts';
import { met, type Met } from '../../../core/language/met.ts';
import type { Scanned } from '../../../core/language/tokens.ts';

/** A card with its verdict in the headline, and what a rule it judges names: one class of each group. */
type Judged = readonly [card: string, ...groups: readonly (readonly Met[])[]];
/** A card that speaks of the subject and gives no verdict. */
type Near = readonly [kind: Kind, card: string, ...groups: readonly (readonly Met[])[]];

const DEAD: readonly Met[] = ['lives.dies', 'looks.dead'];
const RUINS: readonly Met[] = [
  'poisons.poison',
  'manner.toxic',
  'manner.lethal',
  'looks.whole',
  'manner.ruins',
  '#parameter',
];
const ANIMALS: readonly Met[] = [
  'animals.snail',
  'animals.cucumber',
  'animals.anemone',
  'animals.crab',
  'animals.shrimp',
  'fish.anyFish',
];
const CORALS: readonly Met[] = [
  '#coral',
  'corals.anyCoral',
  'corals.softCoral',
  'corals.otherSps',
  'corals.acropora',
  'animals.anemone',
];
const ALGAE: readonly Met[] = ['animals.hairAlgae', 'animals.cyano', 'looks.slime'];

/** The particular before the general. */
const judged: readonly Judged[] = [
  ['fish by volume', ['sums.fishPerVolume']],
  ['coin or metal', ['poisons.coin', 'poisons.copper']],
  ['dead animal', DEAD, ANIMALS, RUINS],
  ['clown and anemone', ['fish.clown'], ['animals.anemone'], ['parts.wish', 'manner.must']],
  [
    'tingle',
    ['body.shocked', 'body.numb'],
    ['hardware.plug', 'hardware.voltage', 'gear.lamp', 'substances.saltMix'],
  ],
  ['boiled rock', ['deeds.boils', 'hardware.pan'], ['places.rock', 'substances.rockAndSand']],
  [
    'zoanthids',
    ['corals.zoanthid', 'corals.palythoa'],
    [
      'manner.toxic',
      'poisons.poison',
      'manner.lethal',
      'lives.dies',
      'places.near',
      'body.hand',
      'manner.must',
    ],
  ],
  ['water changes', ['deeds.changesWater']],
  ['garlic', ['substances.garlic']],
  ['cleaner cures', ['animals.shrimp', 'fish.cleanerFish'], ['fish.parasite']],
  ['white spot', ['fish.parasite']],
  ['waiting', ['manner.waits'], CORALS],
  ['carbon', ['gear.carbonMedia']],
  ['LED', ['gear.ledLamp'], CORALS],
  ['blue light', ['looks.blue'], ALGAE],
  ['moonlight', ['times.moon']],
  ['snails', ['animals.snail'], [...ALGAE, '#parameter']],
  ['small tank', ['places.nano', 'gear.sump']],
  ['sand bed', ['places.sandBed']],
];

const near: readonly Near[] = [
  ['handling', 'palytoxin facts', ['corals.palythoa']],
  ['handling', 'fish spines', ['fish.venomSpine']],
  ['handling', 'bristle worm', ['animals.bristleworm', 'animals.fireworm']],
  ['equipment', 'ground probe', ['hardware.residual']],
  [
    'equipment',
    'room fumes',
    ['poisons.airFreshener', 'poisons.aerosol', 'poisons.perfume', 'poisons.smoke'],
  ],
  ['equipment', 'outage length', ['hardware.outage', 'lives.gasps', 'hardware.voltage']],
  ['equipment', 'heater failure', ['gear.heater']],
  ['equipment', 'tap chlorine', ['substances.tapWater']],
  ['equipment', 'skimmer need', ['gear.skimmer']],
];

/** Cards with a verdict on what a message passes on, the particular first; those of a level by the parameter it names. */
export function judgedByHearsay({ slots, reading: { scanned } }: Frame): readonly SubjectCard[] {
  const { of, share } = slots;
  const found = judged.filter(([, ...groups]) => isMet(scanned, groups)).map(([card]) => card);
  const isChange = share !== undefined && met(scanned, 'parts.change');
  const isNitrite = scanned.names.some(({ id }) => id === 'nitrite');
  const level = (of === 'nitrate' && !isNitrite) || of === 'phosphate' ? [of] : [];
  const labels = new Set([...found, ...(isChange ? ['water changes'] : []), ...level]);
  return [...labels].flatMap((card) => hearsayCard(card) ?? []);
}

/** The card that speaks of what a rule is about. */
export function nearHearsay(scanned: Scanned): SubjectCard | undefined {
  const found = near.find(([, , ...groups]) => isMet(scanned, groups));
  return found && subjectCard(found[0], found[1]);
}

function isMet(scanned: Scanned, groups: readonly (readonly Met[])[]): boolean {
  return groups.every((classes) => met(scanned, ...classes));
}
