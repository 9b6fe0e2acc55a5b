import { corals } from './coral-list.ts';
import type { CoralGroup } from './kind.ts';
import { suits, suitsOrNot, type Suits, type Wanted } from './suits.ts';

/** Every coral of the group that fits: the easier first, and of those kinds of different groups in turn, the milder first. */
export function suited(wanted: Wanted): readonly Suits[] {
  const fitting = corals
    .filter(({ group }) => wanted.group === undefined || group === wanted.group)
    .flatMap((entry) => suitsOrNot(entry, wanted) ?? [])
    .sort((a, b) => rank(a) - rank(b));
  return hardinessOrder.flatMap((hardiness) =>
    inTurn(fitting.filter(({ entry }) => entry.hardiness.value === hardiness)),
  );
}

/** The first of every group, then the second of every group, and so on. */
function inTurn(sorted: readonly Suits[]): readonly Suits[] {
  const turns = new Map<CoralGroup, number>();
  return sorted
    .map((one) => {
      const turn = (turns.get(one.entry.group) ?? 0) + 1;
      turns.set(one.entry.group, turn);
      return { one, turn };
    })
    .sort((a, b) => a.turn - b.turn)
    .map(({ one }) => one);
}

/** The nearest misses: those with least against them, for when nothing fits. */
export function nearMisses(wanted: Wanted, most: number): readonly Suits[] {
  return corals
    .filter(({ group }) => wanted.group === undefined || group === wanted.group)
    .map((entry) => suits(entry, wanted))
    .filter(({ against }) => against.length > 0)
    .sort((a, b) => a.against.length - b.against.length || rank(a) - rank(b))
    .slice(0, most);
}

const hardinessOrder = ['easy', 'moderate', 'demanding'] as const;
const potencyOrder = ['none', 'mild', 'moderate', 'strong', 'severe'];

const demandOrder = ['none', 'low', 'low-medium', 'medium', 'medium-high', 'high'];

/** Lower comes first: hardiness counts most, then how common it is, what is to be watched, what it takes, its sting; anemones last. */
function rank({ entry, watch }: Suits): number {
  return (
    100 * hardinessOrder.indexOf(entry.hardiness.value) +
    10 * watch.length +
    4 * potencyOrder.indexOf(entry.sting.potency) +
    6 * demandOrder.indexOf(entry.stonyDemand.value) +
    (entry.tier === 'core' ? 0 : 30) +
    (entry.hazard?.palytoxin === true ? 5 : 0) +
    (entry.group === 'anemone' ? 60 : 0)
  );
}
