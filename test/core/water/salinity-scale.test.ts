import { expect, it } from 'vitest';
import { inPpt } from '../../../core/water/salinity-scale.ts';

it.each([
  ['35', '35 ppt'],
  ['2', '2 ppt'],
  ['33.5', '33.5 ppt'],
  ['1.025', '1.025'],
  ['1', '1'],
  ['53', '53'],
  ['44', '44'],
  ['35 ppt', '35 ppt'],
])('a bare %s of an instrument is %s', (text, read) => expect(inPpt(text)).toBe(read));
