import { met } from '../../../core/language/met.ts';
import { parameterSlots } from '../../../core/language/slots.ts';
import { ruleWithin } from '../../../core/claims/judge.ts';
import { state } from '../../../core/claims/stated.ts';
import { MAX_MESSAGE_LENGTH } from '../../../core/message-length.ts';
import { claimCommand } from '../../claim.ts';
import { call } from '../../called.ts';
import { verdictOf } from '../../claim/verdict.ts';
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
    label: 'Is that rule right?',
    uses: QUANTITIES,
    answer: (frame, context) => {
      const { given, scanned } = frame.reading;
      const rule = ruleWithin(scanned);
      const text =
        given.length <= MAX_MESSAGE_LENGTH ? given : (rule?.text ?? given).slice(0, MAX_MESSAGE_LENGTH);
      // A copper coin or pipe is no medicine.
      const isMetal = met(scanned, 'poisons.coin', 'hardware.pipe');
      const isOfDose = (namesMedicine(scanned) && !isMetal) || namesBleach(scanned);
      const known =
        rule === undefined && !isOfDose ? (verdictOf(frame) ?? subjectOf(frame, context)) : undefined;
      return known ?? call(claimCommand, { rule: text, volume: state(scanned).tank }, context);
    },
  },
];
