import { describe, expect, it } from 'vitest';
import { namesStandard } from '../../../core/language/standard-named.ts';
import { scan } from '../../../core/language/tokens.ts';

describe('a 35 that names its standard', () => {
  it.each([
    ['it reads 37 on the 35 ppt fluid', true],
    ['the 35 calibration solution shows 36', true],
    ['35 ppt reference, reads 34', true],
    ['tank is 35 and the fluid is old', false],
    ['salinity 35', false],
    ['1.026 on the standard', false],
  ])('%s: %s', (text, named) => expect(namesStandard(scan(text))).toBe(named));
});
