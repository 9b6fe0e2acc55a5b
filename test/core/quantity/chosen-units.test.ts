import { assert, property, record, option, constantFrom } from 'fast-check';
import { expect, it } from 'vitest';
import {
  alkalinitySymbols,
  cmOf,
  firstChosen,
  lengthSymbols,
  temperatureSymbols,
  unitsOfLocale,
  volumeSymbols,
} from '../../../core/quantity/chosen-units.ts';

// CLDR supplemental data, measurement systems and measurement of temperature, from memory: US for the United States and
// Liberia; °F in six.
it.each([
  ['en-US', ['US gal', 'in', '°F']],
  ['es-US', ['US gal', 'in', '°F']],
  ['en-LR', ['US gal', 'in', '°C']],
  ['en-BS', ['L', 'cm', '°F']],
  ['en-GB', ['L', 'cm', '°C']],
  ['pt-BR', ['L', 'cm', '°C']],
  ['en', [undefined, undefined, undefined]],
  [undefined, [undefined, undefined, undefined]],
] as const)('%s measures in %j', (locale, units) => {
  const { volume, length, temperature } = unitsOfLocale(locale);
  expect([volume, length, temperature]).toEqual(units);
});

// NIST SP 811, 2008, appendix B.8: 1 in = 2.54 cm exactly.
it('an inch is 2.54 cm', () => expect([cmOf('in'), cmOf('cm')]).toEqual([2.54, 1]));

it('the first choice of a kind wins, whatever is chosen of the others', () => {
  const one = option(
    record({
      volume: option(constantFrom(...volumeSymbols), { nil: undefined }),
      length: option(constantFrom(...lengthSymbols), { nil: undefined }),
      temperature: option(constantFrom(...temperatureSymbols), { nil: undefined }),
      alkalinity: option(constantFrom(...alkalinitySymbols), { nil: undefined }),
    }),
    { nil: undefined },
  );
  assert(
    property(one, one, one, (a, b, c) => {
      const chosen = firstChosen(a, b, c);
      for (const kind of ['volume', 'length', 'temperature', 'alkalinity'] as const)
        expect(chosen[kind]).toBe(a?.[kind] ?? b?.[kind] ?? c?.[kind]);
    }),
  );
});
