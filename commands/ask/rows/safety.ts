import { handlingAnswer } from '../../triage/handling.ts';
import { urgentCommand } from '../../urgent.ts';
import { medicineAnswer, mixingAnswer } from '../../triage/refused.ts';
import { despairAnswer } from '../../urgent/despair.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';

/** What can hurt a person or an animal, asked before it does. */
export const safetyRows: readonly Row[] = [
  {
    kind: 'medicine',
    label: 'ask.kindMedicine',
    uses: [],
    answer: ({ reading }, context) => medicineAnswer(reading, context),
  },
  {
    kind: 'mixing',
    label: 'ask.kindMixing',
    uses: ['salt', 'salts', 'of'],
    answer: ({ slots, reading }) => mixingAnswer(reading.scanned, slots),
  },
  {
    kind: 'handling',
    label: 'ask.kindHandling',
    uses: ['salt', 'salts', 'corals'],
    answer: ({ slots, reading }, context) => handlingAnswer(reading.scanned, slots, context),
  },
  {
    kind: 'euthanasia',
    label: 'ask.kindEuthanasia',
    uses: [],
    answer: ({ reading }, context) =>
      despairAnswer(reading.scanned) ?? call(urgentCommand, { what: 'dying animal' }, context),
  },
];
