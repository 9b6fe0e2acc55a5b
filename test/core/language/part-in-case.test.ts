import { expect, it } from 'vitest';
import { noCase, withMoment } from '../../../core/language/case.ts';
import { withParts } from '../../../core/language/part-in-case.ts';
import type { OfName, PartName } from '../../../core/language/parts.ts';
import { saidOf } from './said-of.ts';

const before = withMoment(
  noCase,
  {
    atMs: 0,
    kind: 'told',
    slots: {
      of: 'alkalinity',
      levels: [
        { of: 'alkalinity', part: 'now', text: '7', value: 7 },
        { of: 'salinity', part: 'now', text: '31', value: 31 },
      ],
    },
  },
  '',
);

it.each<readonly [string, readonly [PartName, OfName], PartName]>([
  ['my goal is 8.5', ['now', 'alkalinity'], 'wanted'],
  ['back to 8.5', ['now', 'alkalinity'], 'wanted'],
  ['the barrel has 10', ['now', 'alkalinity'], 'other'],
  ['it reads 7.4 now', ['wanted', 'alkalinity'], 'now'],
  ['i would like 8.2', ['wanted', 'alkalinity'], 'wanted'],
  ['that is 2 higher', ['now', 'salinity'], 'change'],
  ['it reads 7', ['now', 'alkalinity'], 'now'],
])('%s', (text, read, part) => {
  const { scanned, said } = saidOf(text, read);
  const reading = { given: text, scanned, said, kinds: [], cards: () => [] };
  expect(withParts(reading, before).said.map((one) => one.part)).toEqual([part]);
});
