import { fixed, mass, volume, volumeAsWritten } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { readSalinity } from '../../core/water/salinity-reading.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { answer } from '../answer.ts';
import { says, type Intent } from './intent.ts';
import { saidOf } from '../../core/words/hear.ts';

const BATCH = [
  'bin',
  'bucket',
  'trash ?can',
  'barrel',
  'tubs?',
  'drum',
  'batch',
  'new salt ?(?:water|mix)?',
  'mix(?:ed|ing)? (?:at|to|reads?)',
  'freshly mixed',
  'container',
  'jug',
];

/** "new mix reads 1.023 in a 32 gal bin, want 1.026": no animals in it, so in one go; salt or fresh water to add. */
export const batchIntent: Intent = (heard) => {
  const said = saidOf(heard, 'salinity');
  const goal = said.find(({ role }) => role === 'goal') ?? said[1];
  const now = said.find((one) => one !== goal);
  const water = tankVolume(heard);
  if (
    goal === undefined ||
    now === undefined ||
    said.length > 2 ||
    water === undefined ||
    !says(heard, ...BATCH)
  )
    return undefined;
  if (says(heard, 'tank', 'corals?', 'fish', 'display', 'reef', 'system')) return undefined;
  const [from, to] = [now, goal].map(({ mention }) => readSalinity(mention.text, { field: 'salinity' }));
  if (from === undefined || to === undefined) return undefined;
  const [low, high] = [from.practicalSalinity, to.practicalSalinity];
  const { value: litres, written, unit, notes } = readQuantity('volume', water.text, { field: 'volume' });
  const of = volumeAsWritten(litres, written, unit);
  const share = low / high - 1;
  const what =
    high > low
      ? `add about ${mass((high - low) * litres)} of salt mix (1 g per litre for each ppt), mix until clear and measure again`
      : `add ${volume(share * litres)} of fresh (RO) water (${fixed(share * 100, 1)} %), or, in a full bin, swap ${volume((1 - high / low) * litres)} for it; mix and measure again`;
  return answer({
    headline: `In ${of} of new salt water: ${what}.`,
    read: [
      `a batch without animals, ${from.written} now, ${to.written} wanted`,
      ...new Set([...from.notes, ...to.notes, ...notes]),
    ],
    facts: [
      { label: 'now', value: `${fixed(low, 1)} ppt` },
      { label: 'wanted', value: `${fixed(high, 1)} ppt` },
    ],
    steps: [
      'Check the instrument on a 35 ppt standard first.',
      'Add most of it, mix, measure, then the rest: mixes differ and bags hold moisture.',
      'In a tank with animals this goes slowly, over days: ask it with "tank" (/salinity adjust).',
    ],
    working: [
      high > low
        ? `(${fixed(high, 1)} - ${fixed(low, 1)}) ppt x ${fixed(litres, 1)} L x 1 g = ${mass((high - low) * litres)}`
        : `${fixed(low, 1)} / ${fixed(high, 1)} - 1 = ${fixed(share * 100, 1)} %`,
    ],
    sources: ['mixing', 'fm83', 'practice'],
  });
};
