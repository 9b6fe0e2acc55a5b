import type { Heard } from '../../core/words/hear.ts';
import type { Answer } from '../answer.ts';
import { says } from './intent.ts';

/** What a question about a dose gives away besides its numbers, and the sentence that answers it. */
interface Remark {
  readonly when: readonly string[];
  readonly step?: string;
  readonly caution?: string;
}

const remarks: readonly Remark[] = [
  {
    when: [
      'dosing off',
      'stopped dosing',
      'stop dosing',
      'turned off my dos(?:er|ing)',
      'turned my dosing off',
    ],
    step: 'Start your usual dosing again today. Next time measure the daily use without stopping it: test, keep dosing, test again, add what was dosed to the change (/dose use).',
  },
  {
    when: ['dump', 'tonight', 'tonite', 'all at once', 'in one go', 'right now'],
    caution: 'Not all at once, and never as dry powder into the tank.',
  },
  {
    when: [
      '(?:mate|friend|buddy|guy|someone|neighbou?r)[^.?!]{0,40}(?:used?|uses|dos\\w+|adds?|added|puts?)',
    ],
    caution:
      'Somebody else’s amount belongs to their volume and their powder, teaspoons most of all. Do not copy it; weigh your own.',
  },
  {
    when: ['calcium reactor', 'reactor', 'gas bottle', 'co2 bottle'],
    step: 'Refit the gas, check the effluent, and leave the daily dose off again once the reactor works: both together dose twice.',
  },
  {
    when: ['vinegar'],
    caution:
      'Vinegar lets a little more lime dissolve and adds organic carbon, which feeds bacteria; it is optional. Never pour acid into the tank to bring alkalinity down.',
  },
];

/** Adds to an answer what the sentence calls for besides its numbers. */
export function withRemarks(heard: Heard, given: Answer): Answer {
  const fitting = remarks.filter(({ when }) => says(heard, ...when));
  const steps = fitting.flatMap(({ step }) => (step === undefined ? [] : [step]));
  const cautions = fitting.flatMap(({ caution }) => (caution === undefined ? [] : [caution]));
  return { ...given, steps: [...steps, ...given.steps], cautions: [...cautions, ...given.cautions] };
}
