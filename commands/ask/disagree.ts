import { saidOf } from '../../core/words/hear.ts';
import { compareSalinityCommand } from '../salinity/compare.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';

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
export const disagreeIntent: Intent = (heard, context) => {
  const [first, second, more] = saidOf(heard, 'salinity');
  if (first === undefined || second === undefined || more !== undefined) return undefined;
  if (!says(heard, ...INSTRUMENTS) || [first, second].some(({ role }) => role === 'goal')) return undefined;
  return call(compareSalinityCommand, { first: first.mention.text, second: second.mention.text }, context);
};
