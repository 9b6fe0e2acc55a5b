import { fewOf } from '../../core/corals/say.ts';
import type { Placed } from '../../core/corals/scene.ts';
import { namedDanger } from './named-danger.ts';
import { palytoxinDangers } from './palytoxin-cautions.ts';

type Standing = Pick<Placed, 'entry' | 'label'>;

/** Of more kinds of harm than so many besides palytoxin, one line stands for all. */
const MOST_HARMS = 2;

/** Harm to people, palytoxin first and always whole; a line for all corals it is said of. */
export function peopleDangers(corals: readonly Standing[]): readonly string[] {
  const holders = corals.filter(({ entry }) => entry.hazard?.palytoxin === true);
  const harms = harmsOf(corals);
  return [
    ...(holders.length === 0 ? [] : palytoxinDangers(holders.map(({ label }) => label))),
    ...(harms.length <= MOST_HARMS
      ? harms.map(harmLine)
      : [
          namedDanger(
            harms.flatMap(({ labels }) => labels),
            ANY_HARM,
          ),
        ]),
  ];
}

const ANY_HARM = 'They sting, burn, cut or are toxic: wear gloves.';

/** Each of the many harms that one line stands for. */
export function peopleCautions(corals: readonly Standing[]): readonly string[] {
  const harms = harmsOf(corals);
  return harms.length <= MOST_HARMS ? [] : harms.map(({ labels, words }) => `${fewOf(labels)}: ${words}`);
}

interface Harm {
  readonly words: string;
  readonly labels: readonly string[];
}

/** What is said of each kind, the corals it is said of together. */
function harmsOf(corals: readonly Standing[]): readonly Harm[] {
  const told = new Map<string, string[]>();
  for (const { entry, label } of corals) {
    for (const { text } of entry.hazard?.notes ?? []) told.set(text, [...(told.get(text) ?? []), label]);
  }
  return [...told].map(([text, labels]) => ({ words: `${text}.`, labels }));
}

function harmLine({ labels, words }: Harm): string {
  return namedDanger(labels, words);
}
