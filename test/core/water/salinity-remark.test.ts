import { expect, it } from 'vitest';
import { salinityRemark } from '../../../core/water/salinity-remark.ts';

// Usual 33 to 36, an instrument's error 1: common practice, no source.
it.each([
  [
    27.94,
    '1.021',
    'Salinity 1.021 (27.9 ppt) is far too low; 33 to 36 ppt is usual. Act today (/urgent what:salinity crash).',
  ],
  [39.8, undefined, 'Salinity 39.8 ppt is high; 33 to 36 ppt is usual.'],
  [35, undefined, undefined],
  [32.4, '1.0245', undefined],
])('%d ppt written %s', (s, written, remark) => expect(salinityRemark(s, written)).toBe(remark));
