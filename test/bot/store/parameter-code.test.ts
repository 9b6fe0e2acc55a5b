import { expect, it } from 'vitest';
import { allCodes, parameterCode, parameterOf } from '../../../bot/store/parameter-code.ts';
import { parameterIds } from '../../../core/water/parameter.ts';

const released =
  'salinity alkalinity calcium magnesium potassium strontium bromide iodine nitrate phosphate ammonia nitrite temperature ph'.split(
    ' ',
  );

it('never changes, as files hold the codes', () => {
  expect(released.map((_, i) => parameterOf(i + 1))).toEqual(released);
});

it('has one code for each parameter', () => {
  expect(new Set(allCodes).size).toBe(parameterIds.length);
  for (const id of parameterIds) expect(parameterOf(parameterCode[id])).toBe(id);
  expect(() => parameterOf(0)).toThrow('code 0');
});
