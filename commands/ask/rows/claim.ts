import { met } from '../../../core/language/met.ts';
import type { Scanned } from '../../../core/language/tokens.ts';
import { parameterSlots } from '../../../core/language/slots.ts';
import { ruleWithin } from '../../../core/claims/judge.ts';
import { state } from '../../../core/claims/stated.ts';
import { MAX_MESSAGE_LENGTH } from '../../../core/message-length.ts';
import { claimCommand } from '../../claim.ts';
import { call } from '../../called.ts';
import { namesBleach, namesMedicine } from '../../triage/refused.ts';
import type { Row } from '../row.ts';
import { subjectOf } from './claim-subject.ts';

/** What a rule is judged by: every quantity of it. */
const QUANTITIES = [
  'levels',
  ...parameterSlots,
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
    label: 'ask.kindClaim',
    uses: QUANTITIES,
    computes: ({ reading: { scanned } }) => isOfDose(scanned) || ruleWithin(scanned) !== undefined,
    answer: (frame, context) => {
      const { given, scanned } = frame.reading;
      const rule = ruleWithin(scanned);
      const text =
        given.length <= MAX_MESSAGE_LENGTH ? given : (rule?.text ?? given).slice(0, MAX_MESSAGE_LENGTH);
      const subject = rule === undefined && !isOfDose(scanned) ? subjectOf(frame, context) : undefined;
      return subject ?? call(claimCommand, { rule: text, volume: state(scanned).tank }, context);
    },
  },
];

/** A medicine or a disinfectant, of which no rule is judged; a copper coin or pipe is none. */
function isOfDose(scanned: Scanned): boolean {
  const isMetal = met(scanned, 'poisons.coin', 'hardware.pipe');
  return (namesMedicine(scanned) && !isMetal) || namesBleach(scanned);
}
