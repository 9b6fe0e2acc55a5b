import type { CoralEntry } from '../../../core/corals/entry.ts';
import { lightFor, middleOf, type CoralLight } from '../../../core/corals/light-need.ts';
import { judgedLight, type LightVerdict } from '../../../core/corals/light-verdict.ts';
import { par } from '../../../core/light/band.ts';
import type { NamedCoral } from '../../../core/corals/named.ts';
import { coralsIn } from '../../../core/words/corals.ts';
import { is, type Mention } from '../../../core/words/mention.ts';
import { answer, type Fact } from '../../answer.ts';
import { fullName } from '../../coral/asked-kind.ts';
import { rangeCommand } from '../../light/range.ts';
import { call } from '../call.ts';
import { says, type Intent } from '../intent.ts';
import { palytoxinCautions } from '../../coral/palytoxin-cautions.ts';

const ASKS = [
  'what par',
  'which par',
  'how much (?:par|light)',
  'how bright',
  '(?:par|light) (?:for|do|does)',
  'lighting for',
  'too? (?:much|bright|dim|strong)',
  'too (?:high|low|little)',
  'enough',
  'acclimat(?:e|ing|ion)',
] as const;
/** Asked of one reading: is it all right? */
const OK = ['ok(?:ay)?', 'good', 'fine', 'safe', 'right', 'alright'] as const;

/** "zoas: what par? I get 60 on the sand and 250 up top": the range of the coral, and each reading against its start. */
export const coralParIntent: Intent = (heard, context) => {
  const asksOne = says(heard, ...OK) && heard.mentions.some((m) => is(m, 'light'));
  if (!asksOne && !says(heard, ...ASKS)) return undefined;
  if (!says(heard, 'par', 'light(?:ing)?', 'ppfd', 'bright', 'dim')) return undefined;
  return coralParAnswer(heard, context);
};

/** The light of the coral that is named, whatever is asked of it. */
export const coralParAnswer: Intent = (heard, context) => {
  if (heard.mentions.some((m) => is(m, 'illuminance') || is(m, 'share'))) return undefined;
  const [named] = coralsIn(heard.text);
  if (named === undefined) return undefined;
  const { entries } = named;
  const need = needOf(entries);
  const readings = heard.mentions.filter(isReading);
  if (entries.every(({ photosynthetic }) => !photosynthetic))
    return call(rangeCommand, { coral: named.name, reading: readings[0]?.text }, context);
  const { lowPpfd, highPpfd, startPpfd } = need;
  return answer({
    headline: `${onlyVerdict(readings, need)}${entries.length === 1 ? entries[0].names.common[0] : named.name}: a range, not one number, ${lowPpfd} to ${highPpfd} PAR${entries.length === 1 ? '' : ' over all it can mean'} (${need.rangeBasis}). A new piece begins near ${startPpfd} and goes up over weeks.`,
    read: [
      `${named.name} as ${entries.map(fullName).join(', or ')}`,
      ...readings.map(({ text }) => `${text} as PAR at a spot`),
    ],
    facts: [
      ...entries.slice(0, MOST_KINDS).map(lightFact),
      ...readings.map((mention) => judged(mention, need)),
    ],
    steps: [
      ...adviceOn(readings, need),
      `Later, as long as it opens well: up by about ${need.raisePercentAWeek} % a week at most (/light ramp), towards ${middleOf(need)} PAR. Many adapt to the upper end.`,
      `Too much, the commoner harm: ${need.tooMuch.signs.join('; ')}. Then: ${need.tooMuch.action}`,
      `Too little: ${need.tooLittle.signs.join('; ')}. Then: ${need.tooLittle.action}`,
      'How many hours a day is it lit? The daily total counts (/light hours).',
    ],
    cautions: [
      ...palytoxinCautions(entries),
      'Light does not promise a colour: food, nutrients and the piece itself do as much.',
    ],
    sources: ['practice', 'memory'],
  });
};

/** Kinds told of one name. */
const MOST_KINDS = 5;

/** What all that a name can mean takes together; the lowest of their starts. */
function needOf(entries: NamedCoral['entries']): CoralLight {
  const needs = entries.map((entry) => lightFor(entry, 'unknown'));
  return {
    ...lightFor(entries[0], 'unknown'),
    photosynthetic: true,
    lowPpfd: Math.min(...needs.map(({ lowPpfd }) => lowPpfd)),
    highPpfd: Math.max(...needs.map(({ highPpfd }) => highPpfd)),
    startPpfd: Math.min(...needs.map(({ startPpfd }) => startPpfd)),
    rangeBasis: [...new Set(needs.map(({ rangeBasis }) => rangeBasis))].join('; '),
  };
}

function lightFact(entry: CoralEntry): Fact {
  const { lowPpfd, highPpfd, startPpfd, rangeBasis, startBasis } = lightFor(entry, 'unknown');
  return {
    label: entry.names.common[0],
    value: `${lowPpfd} to ${highPpfd} PAR (${rangeBasis}); a new piece begins near ${startPpfd} PAR (${startBasis})`,
  };
}

function isReading(mention: Mention): boolean {
  return (is(mention, 'light') || is(mention, 'bare')) && mention.value >= 5 && mention.value <= 2500;
}

function judged(mention: Mention, need: CoralLight): Fact {
  const asNew = asNewAt(mention, need);
  return {
    label: `at ${mention.text}`,
    value: `${par(mention.value)}, for a new piece: ${asNew.word}`,
    verdict: asNew.verdict,
  };
}

function asNewAt({ value }: Mention, need: CoralLight): LightVerdict {
  return judgedLight(need, 'new', { lowPpfd: value, ppfd: value, highPpfd: value });
}

/** "Too bright: 300 PAR, 190 PAR over ... " for a new piece, where one reading is asked about. */
function onlyVerdict(readings: readonly Mention[], need: CoralLight): string {
  const [one, other] = readings;
  if (one === undefined || other !== undefined) return '';
  const { value } = one;
  const asSettled = judgedLight(need, 'settled', { lowPpfd: value, ppfd: value, highPpfd: value });
  const asNew = asNewAt(one, need);
  const settled =
    asNew.side === 'bright' && asSettled.side === 'fits'
      ? ' A piece that has long been here may have it.'
      : '';
  return `${asNew.headline}${settled} `;
}

/** What to do at the one reading, or where to begin among several. */
function adviceOn(readings: readonly Mention[], need: CoralLight): readonly string[] {
  const [one, other] = readings;
  if (one === undefined) return [];
  if (other === undefined) return [asNewAt(one, need).advice];
  const values = readings.map(({ value }) => value);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const { startPpfd } = need;
  if (most <= startPpfd) return [];
  if (least >= startPpfd) return ['Begin at the dimmest of these spots, or shade it for the first weeks.'];
  const from = Math.round((startPpfd * 3) / 20) * 5;
  return [
    `Begin between the two, low to middle height, where it reads ${from} to ${startPpfd} PAR; later further up.`,
  ];
}
