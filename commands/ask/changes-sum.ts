import { ruleText } from '../../core/claims/rule-text.ts';
import { sumCommand } from '../waterchange/sum.ts';
import { call } from './call.ts';
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
export const changesSumIntent: Intent = (heard, context) => {
  if (heard.said.length > 0 || !says(heard, 'water ?changes?', 'wcs?', 'changes?')) return undefined;
  if (!says(heard, ...TOGETHER)) return undefined;
  const text = ruleText(heard.text);
  const [found, count, share] = SEVERAL.exec(text) ?? [];
  const times = Number(count);
  if (found === undefined || times < 2 || times > MOST || Number(share) <= 0) return undefined;
  const said = OTHER.exec(text.slice(text.indexOf(found) + found.length))?.[1];
  const single = said === undefined || Number(said) <= 0 ? undefined : `${said} %`;
  return call(sumCommand, { share: `${share} %`, times, single }, context);
};
