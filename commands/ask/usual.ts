import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { usualAnswer } from '../checkup/usual-answer.ts';
import { says, type Intent } from './intent.ts';

const ASKS =
  /^(?:(?:hi|hey|hello|so|ok|and)[,.!]*\s+)*(?:what(?:'s| is|s| are| should| do)?|where|which|how high|how low|normal|ideal|good|best|recommended|usual|safe|target)\b/;
const WISH = [
  'should',
  'normal',
  'ideal',
  'good',
  'best',
  'right',
  'recommended',
  'usual',
  'safe',
  'supposed',
  'target',
  'range',
  'aim',
  'keep',
] as const;
const ALL = ['parameters?', 'params?', 'numbers', 'levels', 'values', 'water chemistry', 'readings'] as const;
/** Longer sentences ask something particular. */
const MOST_WORDS = 12;
/** Where a number belongs to something else than the tank. */
const ELSEWHERE = [
  'coral food',
  'dose',
  'doser',
  'dosing',
  'raise',
  'lower',
  'kit',
  'test kit',
  'brand',
  'salt',
  'light',
  'par',
  'flow',
  'quarantine',
  'qt',
  'cycl\\w*',
] as const;

/** "what should my alk be", "normal nitrate": where reefs are usually kept, or the aim of the tank in use. */
export const usualIntent: Intent = (heard, { keep }) => {
  const isLong = heard.text.split(' ').length > MOST_WORDS;
  if (heard.mentions.length > 0 || isLong || !ASKS.test(heard.text)) return undefined;
  if (!says(heard, ...WISH) || says(heard, ...ELSEWHERE)) return undefined;
  const named: readonly ParameterId[] = [
    ...(says(heard, ...parameter('salinity').names) ? (['salinity'] as const) : []),
    ...heard.parameters,
  ];
  return named.length === 0 && !says(heard, ...ALL) ? undefined : usualAnswer(named, keep);
};
