import { expect, it } from 'vitest';
import { saidSigns } from '../../../commands/triage/said-signs.ts';
import { scan } from '../../../core/language/tokens.ts';

const signs = (text: string): readonly string[] => saidSigns(scan(text)).map(({ sign }) => sign);

it.each([
  ["there's a new peppermint shrimp, am i daft blaming him", ['new animal']],
  ['nothing new in the tank but a peppermint shrimp', ['new animal']],
  ['added a coral beauty last week', ['new animal']],
  ['after I give the amino it makes spit', ['fed']],
  ['shut since i put up the new led lamp', ['new light']],
  ['The three that open all stand in the shade of the overflow', ['bright']],
  ['i moved it to the back yesterday', ['handled']],
])('%s', (text, found) => expect(signs(text)).toEqual(found));

it.each(['my torch is shut', 'the shrimp is fine, all is closed', 'it gets light from the window'])(
  'nothing is named as done: %s',
  (text) => expect(signs(text)).toEqual([]),
);
