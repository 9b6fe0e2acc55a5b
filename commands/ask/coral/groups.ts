import { readIn } from '../../../core/corals/basis-words.ts';
import { corals } from '../../../core/corals/coral-list.ts';
import type { CoralGroup } from '../../../core/corals/kind.ts';
import { largePolypPpfd } from '../../../core/light/band.ts';
import { coralsIn } from '../../../core/words/corals.ts';
import type { Heard } from '../../../core/words/hear.ts';
import { is } from '../../../core/words/mention.ts';
import { answer, type Answer } from '../../answer.ts';
import { isTrouble } from './named.ts';
import { says, type Intent } from '../intent.ts';

/** The kinds of corals as members call them. */
const groups: readonly (readonly [CoralGroup, string, readonly string[]])[] = [
  ['small-polyp', 'Small-polyp stony corals', ['sps', 'small ?polyps?(?: stony)?']],
  ['large-polyp', 'Large-polyp stony corals', ['lps', 'large ?polyps?(?: stony)?']],
  ['soft', 'Soft corals', ['softies', 'soft ?corals?', 'leathers?']],
];

function groupIn(heard: Heard): (typeof groups)[number] | undefined {
  const named = groups.filter(([, , words]) => says(heard, ...words));
  return named.length === 1 ? named[0] : undefined;
}

const LIGHT = ['par', 'ppfd', 'light(?:ing)?', 'bright(?:ness)?'] as const;
const ASKS = ['how much', 'how bright', 'what', 'which', 'needs?', 'want', 'ok(?:ay)?', 'enough', 'too? (?:much|bright|high|low)'] as const; // prettier-ignore

/** "how much par for sps", "is 250 par ok for lps": most of a group, and that each has its own range. */
export const groupLightIntent: Intent = (heard) => {
  const group = groupIn(heard);
  if (group === undefined || !says(heard, ...LIGHT) || !says(heard, ...ASKS)) return undefined;
  if (isTrouble(heard) || says(heard, 'hours?', 'hrs?', 'which corals?', 'what corals?')) return undefined;
  if (coralsIn(heard.text).some(({ entries }) => entries[0].group !== group[0])) return undefined;
  if (heard.mentions.some((m) => is(m, 'illuminance') || is(m, 'share'))) return undefined;
  const { low, high, start } = usualOf(group[0]);
  const reading = heard.mentions.find((m) => is(m, 'light'));
  const basis =
    group[0] === 'large-polyp'
      ? 'common practice'
      : 'middle values of the guide: common practice and from memory';
  return answer({
    headline: `${reading === undefined ? '' : `${Math.round(reading.value)} PAR is ${verdictOf(reading.value, low, high, start)} most of them. `}${group[1]}: most live at ${low} to ${high} PAR, and begin near ${start} (${basis}). Each kind has its own range.`,
    read: reading === undefined ? [] : [`${reading.text} as light at the coral`],
    steps: [
      'Name the coral and I give its own range: "how much light for a torch".',
      'Begin low and go up by about 10 % a week. Too much light harms more often than too little.',
    ],
    working:
      group[0] === 'large-polyp'
        ? []
        : ['middle values of the ranges of that group in the guide, to the nearest 25'],
    sources: ['practice', 'memory'],
  });
};

function verdictOf(ppfd: number, low: number, high: number, start: number): string {
  if (ppfd > high) return 'too bright for';
  if (ppfd < low) return 'too dim for';
  return ppfd > 1.25 * start
    ? 'within the range, but bright for a new piece, of'
    : 'a fair place to begin for';
}

/** Large-polyp: common practice; the others: the medians of the guide's entries, to the nearest 25. */
function usualOf(group: CoralGroup): { low: number; high: number; start: number } {
  if (group === 'large-polyp') return { ...largePolypPpfd };
  const lights = corals
    .filter((entry) => entry.group === group && entry.photosynthetic)
    .map(({ light }) => light);
  return {
    low: middle(lights.map(({ lowPpfd }) => lowPpfd)),
    high: middle(lights.map(({ highPpfd }) => highPpfd)),
    start: middle(lights.map(({ startPpfd }) => startPpfd)),
  };
}

function middle(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return Math.round((sorted[Math.floor(sorted.length / 2)] ?? 0) / 25) * 25;
}

const SOFT = ['softies', 'soft ?corals?', 'leathers?', 'toadstools?', 'sinularia', 'kenya trees?'] as const;
const STONY = ['sps', 'lps', 'stony', 'stonies', 'hard ?corals?', 'acros?', 'acropora'] as const;
const TOGETHER = ['mix(?:ed|ing)?', 'together', 'next to', 'near', 'kills?', 'harms?', 'hurts?', 'toxic', 'poison(?:s|ous)?', 'with', 'how far', 'bother'] as const; // prettier-ignore

/** "can I mix softies and sps", "do leathers kill sps": one tank, not one rock. */
export const softBesideStonyIntent: Intent = (heard) => {
  if (!says(heard, ...SOFT) || !says(heard, ...STONY) || !says(heard, ...TOGETHER)) return undefined;
  return isTrouble(heard) ? undefined : softBesideStony();
};

function softBesideStony(): Answer {
  return answer({
    headline:
      'One tank, not one rock: keep 10 cm or more between soft and stony corals, and run activated carbon. Many keep both, but leathers put chemicals into the water.',
    facts: [
      {
        label: 'what was seen',
        value: `within 10 cm of a soft coral most corals were interacting to the harm of one or both (${readIn('Griffith1997')}); in contact the soft side usually loses (${readIn('Dai1990')})`,
      },
    ],
    steps: [
      'Put the soft ones downstream, and change the carbon often.',
      'Stony corals that stay shut, pale or stop growing beside large leathers: more room, fresh carbon, a water change.',
      'Ask for a pair: "can a toadstool be near my acropora".',
    ],
    sources: ['practice'],
  });
}
