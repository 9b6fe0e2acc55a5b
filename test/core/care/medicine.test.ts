import { expect, it } from 'vitest';
import { namesMedicine } from '../../../core/care/medicine.ts';

it.each(['copper', 'Copper sulfate', 'methylene blue', 'some antibiotics', 'formalin'])('%s is one', (text) =>
  expect(namesMedicine(text)).toBe(true),
);

it.each(['', 'soda ash', 'magnesium sulfate', 'vinegar', 'coppery'])('"%s" is none', (text) =>
  expect(namesMedicine(text)).toBe(false),
);
