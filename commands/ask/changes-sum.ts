import { ruleText } from '../../core/claims/rule-text.ts';
import { afterChanges } from '../../core/change/exchange.ts';
import { fixed } from '../../core/quantity/format.ts';
import { answer } from '../answer.ts';
import { says, type Intent } from './intent.ts';

const SEVERAL =
  /(?<![\d.])(\d{1,2})(?:\s*(?:x|times|\*)\s*|\s+(?:(?:water )?changes of\s+|(?:back to back|separate|weekly|daily|small)\s+)?)(\d{1,2}(?:\.\d+)?)\s*%/;
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
const OTHER =
  /(?:same as|equals?|equal to|as good as|like|=|vs|versus|instead of|or)\s*(?:1|a|an|one|single|\s)*\s*(\d{1,2})\s*%?/;

/** "three 10% water changes equal how much", "two 25% changes same as one 50?": what several take out together. */
export const changesSumIntent: Intent = (heard) => {
  if (heard.said.length > 0 || !says(heard, 'water ?changes?', 'wcs?', 'changes?')) return undefined;
  if (!says(heard, ...TOGETHER)) return undefined;
  const text = ruleText(heard.text);
  const [found, times, share] = SEVERAL.exec(text) ?? [];
  const [count, each] = [Number(times), Number(share)];
  if (found === undefined || count < 2 || count > MOST || each <= 0) return undefined;
  const out = 100 - afterChanges({ now: 100, fresh: 0, fraction: each / 100 }, count);
  const said = OTHER.exec(text.slice(text.indexOf(found) + found.length))?.[1];
  const verdict =
    said === undefined ? '' : Math.abs(Number(said) - out) <= 1 ? 'About the same: ' : 'Not the same: ';
  const versus =
    said === undefined || verdict.startsWith('About') ? '' : `, one of ${said} % replaces ${said} %`;
  return answer({
    headline: `${verdict}${count} changes of ${each} % replace ${fixed(out, 1)} % of the old water${versus}.`,
    read: [`${count} changes of ${each} %, one after the other`],
    steps: [
      'Each one also takes out new water, so the shares do not add up.',
      'Small ones move salinity, temperature and alkalinity less at a time. Match the new water all the same.',
    ],
    working: [`1 - (1 - ${fixed(each / 100, 3)})^${count} = ${fixed(out / 100, 4)}`],
    sources: ['mixing'],
  });
};
