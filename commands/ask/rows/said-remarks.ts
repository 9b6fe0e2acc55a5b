import type { Frame } from '../../../core/language/frame.ts';
import { met, type Met } from '../../../core/language/met.ts';
import type { Answer } from '../../answer.ts';
import { remarked, type Remark } from '../../dose/remarks.ts';

/** By the classes of their words what a question about a dose gives away besides its numbers. */
const REMARKS: readonly (readonly [Remark, readonly Met[]])[] = [
  ['dosing stopped', ['deeds.stopsDosing']],
  ['at once', ['times.atOnce']],
  ['amount of another', ['manner.otherPerson', 'body.otherPeople']],
  ['calcium reactor', ['gear.calciumReactor']],
  ['vinegar', ['substances.vinegar']],
];

/** Adds to an answer about a dose what the message calls for besides its numbers. */
export function withRemarks({ reading: { scanned } }: Frame, given: Answer): Answer {
  return remarked(
    given,
    REMARKS.flatMap(([remark, classes]) => (met(scanned, ...classes) ? [remark] : [])),
  );
}
