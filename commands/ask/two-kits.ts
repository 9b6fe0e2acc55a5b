import { kitsCommand } from '../water/kits.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';

/** "one kit 180, other 240, both ppm": alkalinity by two kits, in one unit, and whether they agree. */
export const twoKitsIntent: Intent = (heard, context) => {
  if (!says(heard, 'kits?', 'tests', 'testers?', 'checkers?') || !heard.parameters.includes('alkalinity'))
    return undefined;
  const [first, second] = heard.said
    .filter(({ parameter: id, role }) => id === 'alkalinity' && role !== 'goal')
    .map(({ mention }) => mention);
  if (first === undefined || second === undefined || first.value <= 0 || second.value <= 0) return undefined;
  const ppm = says(heard, 'ppm', 'mg/l');
  const inPpm = (text: string): string => (ppm && /^[\d.,]+$/.test(text) ? `${text} ppm` : text);
  return call(
    kitsCommand,
    { of: 'alkalinity', first: inPpm(first.text), second: inPpm(second.text) },
    context,
  );
};
