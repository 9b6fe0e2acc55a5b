import { describe, expect, it } from 'vitest';
import { ask, value } from './asked.ts';
import { textOf, problemOf } from '../text.ts';

describe('/light lux', () => {
  it('gives the whole span for LEDs of unknown mix: about 130 to over 1000 PAR for 9000 lux', () => {
    const given = ask('lux', { reading: '9000 lux', lamp: 'led' });
    expect(given.headline).toBe(
      '9000 lux under LEDs of unknown mix cannot be turned into one PAR: it could be anything from about 130 to 1200 PAR.',
    );
    const text = textOf(given);
    for (const said of ['phone clips', 'under water', 'compare', 'quantum meter', 'Which channels are on']) {
      expect(text).toContain(said);
    }
  });

  it('spans every kind of lamp when none is named, and lists each', () => {
    const given = ask('lux', { reading: '9 klux' });
    expect(given.headline).toContain('about 110 to 1200 PAR');
    expect(value(given, 'white LEDs')).toContain('130 to 170 PAR');
    expect(value(given, 'blue LEDs alone')).toContain('530 to 1200 PAR');
  });

  it.each(['daylight', 'white', 'blue-white', 'blue', 'led', 'halide', 'fluorescent'])(
    'never gives one PAR under %s',
    (lamp) => {
      const given = ask('lux', { reading: '9000', lamp });
      expect(given.headline).toMatch(/about \d+ to \d+ PAR\.$/);
      expect(textOf(given)).not.toMatch(/= \d+ PAR|is \d+ PAR/);
    },
  );

  it('does not take blue light for daylight', () => {
    const given = ask('lux', { reading: '9000 lux', lamp: 'blue' });
    expect(given.headline).toContain('530 to 1200 PAR');
    expect(textOf(given)).toContain('Do not set light for corals by this range');
  });

  it.each([
    [{ reading: '0 lux' }, 'reading'],
    [{ reading: '250 PAR' }, 'reading'],
    [{ reading: '9000 lux', lamp: 'torch' }, 'lamp'],
  ] as const)('refuses %o, naming %s', (input, field) => {
    expect(problemOf(() => ask('lux', input)).field).toBe(field);
  });
});
