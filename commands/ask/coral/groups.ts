import { usualLight, usualLightWords, USUAL_LIGHT_RULE } from '../../../core/corals/group-light.ts';
import { readIn } from '../../../core/corals/basis-words.ts';
import type { CoralGroup } from '../../../core/corals/kind.ts';
import { judgedLight } from '../../../core/corals/light-verdict.ts';
import { coralsIn } from '../../../core/words/corals.ts';
import type { Heard } from '../../../core/words/hear.ts';
import { is } from '../../../core/words/mention.ts';
import { answer, type Answer } from '../../answer.ts';
import { isTrouble } from './named.ts';
import { says, type Intent } from '../intent.ts';

/** The kinds of corals as members call them. */
const groups: readonly (readonly [CoralGroup, readonly string[]])[] = [
  ['small-polyp', ['sps', 'small ?polyps?(?: stony)?']],
  ['large-polyp', ['lps', 'large ?polyps?(?: stony)?']],
  ['soft', ['softies', 'soft ?corals?', 'leathers?']],
];

function groupIn(heard: Heard): (typeof groups)[number] | undefined {
  const named = groups.filter(([, words]) => says(heard, ...words));
  return named.length === 1 ? named[0] : undefined;
}

const LIGHT = ['par', 'ppfd', 'light(?:ing)?', 'bright(?:ness)?'] as const;
const ASKS = [
  'how much',
  'how bright',
  'what',
  'which',
  'needs?',
  'want',
  'ok(?:ay)?',
  'enough',
  'too? (?:much|bright|high|low)',
] as const;

/** "how much par for sps", "is 250 par ok for lps": what is usual in a group, and that each has its own range. */
export const groupLightIntent: Intent = (heard) => {
  const group = groupIn(heard);
  if (group === undefined || !says(heard, ...LIGHT) || !says(heard, ...ASKS)) return undefined;
  if (isTrouble(heard) || says(heard, 'hours?', 'hrs?', 'which corals?', 'what corals?')) return undefined;
  if (coralsIn(heard.text).some(({ entries }) => entries[0].group !== group[0])) return undefined;
  if (heard.mentions.some((m) => is(m, 'illuminance') || is(m, 'share'))) return undefined;
  const reading = heard.mentions.find((m) => is(m, 'light'));
  const verdict =
    reading === undefined
      ? undefined
      : judgedLight(usualLight(group[0]), 'new', {
          lowPpfd: reading.value,
          ppfd: reading.value,
          highPpfd: reading.value,
        });
  return answer({
    headline: `${verdict === undefined ? '' : `${verdict.headline} `}${usualLightWords(group[0])} Each kind has its own range.`,
    read: reading === undefined ? [] : [`${reading.text} as light at the coral`],
    steps: [
      ...(verdict === undefined ? [] : [verdict.advice]),
      'Name the coral and I give its own range: "how much light for a torch".',
      'Begin low and go up by about 10 % a week. Too much light harms more often than too little.',
    ],
    working: [USUAL_LIGHT_RULE],
    sources: ['practice', 'memory'],
  });
};

const SOFT = ['softies', 'soft ?corals?', 'leathers?', 'toadstools?', 'sinularia', 'kenya trees?'] as const;
const STONY = ['sps', 'lps', 'stony', 'stonies', 'hard ?corals?', 'acros?', 'acropora'] as const;
const TOGETHER = [
  'mix(?:ed|ing)?',
  'together',
  'next to',
  'near',
  'kills?',
  'harms?',
  'hurts?',
  'toxic',
  'poison(?:s|ous)?',
  'with',
  'how far',
  'bother',
] as const;

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
