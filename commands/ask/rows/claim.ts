import { ruleWithin } from '../../../core/claims/judge.ts';
import { state } from '../../../core/claims/stated.ts';
import { MAX_MESSAGE_LENGTH } from '../../../core/message-length.ts';
import { claimCommand } from '../../claim.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';

/** What a rule is judged by: every quantity of it. */
const QUANTITIES = [
  'of',
  'levels',
  'now',
  'was',
  'wanted',
  'change',
  'rate',
  'rateDays',
  'other',
  'limit',
  'volume',
  'container',
  'salt',
  'salts',
  'amount',
  'amounts',
  'strength',
  'share',
  'shares',
  'changed',
  'everyDays',
  'span',
  'spans',
  'hours',
  'percents',
  'light',
  'lux',
  'temperature',
  'salinity',
  'counts',
] as const;

export const claimRows: readonly Row[] = [
  {
    kind: 'claim',
    label: 'Is that rule right?',
    uses: QUANTITIES,
    answer: ({ reading: { given, scanned } }, context) => {
      const rule = ruleWithin(scanned);
      const isOfCorals = scanned.names.some((name) => name.class === 'coral');
      if (rule === undefined && isOfCorals && scanned.numbers.length === 0) return undefined;
      const text =
        given.length <= MAX_MESSAGE_LENGTH ? given : (rule?.text ?? given).slice(0, MAX_MESSAGE_LENGTH);
      return call(claimCommand, { rule: text, volume: state(scanned).tank }, context);
    },
  },
];
