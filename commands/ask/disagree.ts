import { fixed } from '../../core/quantity/format.ts';
import { readSalinity } from '../../core/water/salinity-reading.ts';
import { answer } from '../answer.ts';
import { says, type Intent } from './intent.ts';
import { saidOf } from '../../core/words/hear.ts';

const INSTRUMENTS = [
  'refract\\w*',
  'hydromet\\w*',
  'swing ?arm',
  'probe',
  'meter',
  'pen',
  'tester',
  'lab',
  'shop',
  'store',
  'lfs',
  'friend\\w*',
];

/** "refractometer 1.026, hydrometer 1.023": two readings of one water, so nothing is moved until one is proven. */
export const disagreeIntent: Intent = (heard) => {
  const [first, second, more] = saidOf(heard, 'salinity');
  if (first === undefined || second === undefined || more !== undefined) return undefined;
  if (!says(heard, ...INSTRUMENTS) || [first, second].some(({ role }) => role === 'goal')) return undefined;
  const [a, b] = [first, second].map(({ mention }) => readSalinity(mention.text, { field: 'salinity' }));
  if (a === undefined || b === undefined) return undefined;
  const gap = Math.abs(a.practicalSalinity - b.practicalSalinity);
  const isClose = gap <= 1;
  return answer({
    headline: isClose
      ? `Both agree within what such instruments can tell: ${fixed(gap, 1)} ppt apart.`
      : `They are ${fixed(gap, 1)} ppt apart, so at least one is wrong. Change nothing in the tank until you know which.`,
    read: [...new Set([...a.notes, ...b.notes])],
    facts: [
      { label: first.mention.text, value: `${fixed(a.practicalSalinity, 1)} ppt` },
      { label: second.mention.text, value: `${fixed(b.practicalSalinity, 1)} ppt` },
    ],
    steps: [
      'Put a 35 ppt standard on both, at room temperature, and read them: it should show 1.0264 (25/25) or 35 ppt.',
      'Keep the one that reads the standard right, or set it there, then read the tank again (/salinity check works it out).',
      'Rinse them and shake bubbles off a swing arm: they read high by bubbles and are the least sure. Do not take the mean.',
    ],
    sources: ['fm83', 'practice'],
  });
};
