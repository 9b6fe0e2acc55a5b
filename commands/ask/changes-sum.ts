import { afterChanges } from '../../core/change/exchange.ts';
import { fixed } from '../../core/quantity/format.ts';
import { is, state, type Amount } from '../../core/claims/stated.ts';
import { scan } from '../../core/language/tokens.ts';
import { answer } from '../answer.ts';
import { says, type Intent } from './intent.ts';

/** Without one of these the first number may be a tank. */
const TOGETHER = [
  'equals?',
  'equal to',
  'same',
  'how much',
  'vs',
  'versus',
  'total',
  'add up',
  'adds up',
  'as good as',
  'instead of',
  'together',
  'or (?:one|a|1)',
  'replaces?',
  'back to back',
  'better',
] as const;
const MOST = 12;
/** "three 10% water changes equal how much", "two 25% changes same as one 50?": what several take out together. */
export const changesSumIntent: Intent = (heard) => {
  if (heard.said.length > 0 || !says(heard, 'water ?changes?', 'wcs?', 'changes?')) return undefined;
  if (!says(heard, ...TOGETHER)) return undefined;
  const [times, each, other] = severalIn(state(scan(heard.text)).amounts);
  if (times === undefined || each === undefined || times.value > MOST || each.value <= 0) return undefined;
  const count = times.value;
  const out = 100 - afterChanges({ now: 100, fresh: 0, fraction: each.value / 100 }, count);
  const said = other?.value;
  const verdict = said === undefined ? '' : Math.abs(said - out) <= 1 ? 'About the same: ' : 'Not the same: ';
  const versus =
    said === undefined || verdict.startsWith('About') ? '' : `, one of ${said} % replaces ${said} %`;
  return answer({
    headline: `${verdict}${count} changes of ${each.value} % replace ${fixed(out, 1)} % of the old water${versus}.`,
    read: [`${count} changes of ${each.value} %, one after the other`],
    steps: [
      'Each one also takes out new water, so the shares do not add up.',
      'Small ones move salinity, temperature and alkalinity less at a time. Match the new water all the same.',
    ],
    working: [`1 - (1 - ${fixed(each.value / 100, 3)})^${count} = ${fixed(out / 100, 4)}`],
    sources: ['mixing'],
  });
};

/** A whole count right before a share, and the share or number it is held against. */
function severalIn(amounts: readonly Amount[]): readonly (Amount | undefined)[] {
  const at = amounts.findIndex(
    (amount, index) =>
      (is(amount, 'bare') || is(amount, 'times')) &&
      Number.isInteger(amount.value) &&
      amount.value >= 2 &&
      amounts[index + 1]?.kinds.includes('share') === true,
  );
  return at < 0 ? [] : [amounts[at], amounts[at + 1], amounts[at + 2]];
}
