import { basisWords } from '../../core/corals/basis-words.ts';
import type { Bases, Basis } from '../../core/corals/basis.ts';
import type { CoralEntry } from '../../core/corals/entry.ts';
import { flowWords } from '../../core/corals/rules/flow.ts';
import { cmRange } from '../../core/corals/say.ts';
import type { Table } from '../answer.ts';

/** Letters for what a number rests on, so that a column stays narrow. */
const letters: Readonly<Record<Basis['kind'], string>> = {
  practice: 'c',
  memory: 'm',
  published: 'p',
  'project rule': 'r',
};

export const LETTERS_READ =
  'letters: c common practice, m from memory, p published, r project rule; two letters: part one, part the other';

interface Row {
  readonly label: string;
  readonly value: (entry: CoralEntry) => string;
  readonly bases: (entry: CoralEntry) => Bases;
}

const rows: readonly Row[] = [
  {
    label: 'PAR',
    value: ({ light }) => `${light.lowPpfd}-${light.highPpfd}`,
    bases: ({ light }) => light.basis,
  },
  { label: 'begins', value: ({ light }) => String(light.startPpfd), bases: ({ light }) => light.basis },
  { label: 'flow', value: (entry) => narrow(flowWords(entry)), bases: ({ flow }) => flow.basis },
  { label: 'ground', value: ({ ground }) => ground.value, bases: ({ ground }) => ground.basis },
  { label: 'sting', value: ({ sting }) => sting.potency, bases: ({ sting }) => sting.potencyBasis },
  {
    label: 'reach',
    value: ({ sting }) => narrow(cmRange(sting.reachLowCm, sting.reachHighCm)),
    bases: ({ sting }) => sting.reachBasis,
  },
  {
    label: 'clear',
    value: ({ sting }) => `${sting.keepClearCm} cm`,
    bases: ({ sting }) => sting.keepClearBasis,
  },
  { label: 'width', value: ({ size }) => `${size.practicalMaxCm} cm`, bases: ({ size }) => size.basis },
  {
    label: 'a year',
    value: ({ growth }) =>
      `${narrow(cmRange(growth.lowCmPerYear, growth.highCmPerYear))}${growth.range.endsWith('of the genus') ? ' (genus)' : ''}`,
    bases: ({ growth }) => growth.basis,
  },
  {
    label: 'ca, alk',
    value: ({ stonyDemand }) => stonyDemand.value,
    bases: ({ stonyDemand }) => stonyDemand.basis,
  },
  { label: 'to keep', value: ({ hardiness }) => hardiness.value, bases: ({ hardiness }) => hardiness.basis },
];

/** "10-20 cm" for "10 to 20 cm". */
function narrow(range: string): string {
  return range.replace(' to ', '-');
}

/** Two or three corals side by side, each number with the letter of its basis. */
export function compareTable(entries: readonly CoralEntry[]): Table {
  return {
    head: ['', ...entries.map(({ names }) => names.common[0])],
    rows: rows.map(({ label, value, bases }) => [
      label,
      ...entries.map((entry) => `${value(entry)} ${lettersOf(bases(entry))}`),
    ]),
  };
}

/** The papers behind the letter p: "Platygyra, reach: published: Lapid et al. 2004". */
export function comparedPapers(entries: readonly CoralEntry[]): readonly string[] {
  return entries.flatMap((entry) =>
    rows.flatMap(({ label, bases }) => {
      const papers = bases(entry).filter(({ kind }) => kind === 'published');
      return papers.map((paper) => `${entry.names.common[0]}, ${label}: ${basisWords([paper])}`);
    }),
  );
}

function lettersOf(bases: Bases): string {
  return [...new Set(bases.map(({ kind }) => letters[kind]))].join('');
}
