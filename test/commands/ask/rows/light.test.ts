import { describe, expect, it } from 'vitest';
import { lightRows } from '../../../../commands/ask/rows/light.ts';
import type { Kind } from '../../../../core/language/kinds.ts';
import type { Answer } from '../../../../commands/answer.ts';
import { ask } from '../../../../commands/ask.ts';
import { plain, scriptedReader } from '../../../scripted-reader.ts';
import { rowAnswer } from './asked.ts';

const asked: readonly (readonly [Kind, string, RegExp])[] = [
  ['light-hours', 'how many hours of light a day', /^Run 8 to 10 h of main light/],
  ['light-hours', 'is 14 hours of light too much', /^14 h of full light is too long/],
  // Daily light = PAR x hours x 0.0036 mol (3600 s, 1e-6 mol): 200 x 8 = 5.76, 200 x 10 = 7.2.
  ['light-hours', '200 par, how many hours should the lights run', /at 200 PAR that is 5\.8 to 7\.2 mol/],
  // 180 x 8 = x x 10.
  ['light-hours', 'i have 180 par for 8 hours, want 10 hours instead', /^Set the peak to 144 PAR/],
  ['light-lamp', 'new led, how do i acclimate the corals', /^Start a little below the light the corals had/],
  ['light-lamp', 'what percent should my leds run at', /^A setting alone does not tell/],
  ['light-lamp', 'is 70% too strong for my led', /^A setting alone does not tell/],
  // 50 % x 200 / 120 = 83.3 %.
  ['light-lamp', 'at 50% i get 120 par, i want 200 par', /^Set the lamp to about 83 %/],
  ['light-lamp', 'raise the light from 100 par to 200 par, how fast', /^Raise it from 100 PAR to 200 PAR/],
  [
    'lux',
    'phone says 9000 lux under my blue led, what par is that',
    /^9000 lux under LEDs of unknown mix cannot/,
  ],
  ['lux', 'metal halide 20000 lux on the rock', /^20000 lux under metal halide/],
  ['lux', 'phone app says 9000 at the top', /^9000 lux under an unnamed lamp/],
  ['light-lamp', 'new lamp twice as strong over hammers and zoas, where do i begin', /^Start a little below/],
  ['lux', '200 par in lux?', /^200 par cannot be turned into one lux value/],
  ['lux', 'i have no meter, 90 watt lamp, enough for corals?', /^PAR counts the light a coral can use/],
];

/** Numbers marked as a reader finds them. */
function marked(kind: Kind, text: string): Answer {
  const reader = scriptedReader([{ marked: text, kinds: [[kind, 0.95]] }]);
  return ask(plain(text), { nowMs: 0, keep: undefined, reader });
}

describe('what was said beside the first number', () => {
  it('a bare setting beside one in per cent is no PAR', () => {
    const text =
      'from [8 h](setting light) to [10 h](setting light), peak [72](setting light) to [61 %](setting light)';
    // 8 / 10 = 80 %.
    expect(marked('light-hours', text).headline).toMatch(/^Dim to about 80 % of the PAR you have now/);
  });

  // 60 x 1.1^4 = 87.8, 40 x 1.1^6 = 70.9, 30 x 1.1^8 = 64.3; rounding down may take one step more.
  it.each([
    ['blues [60](setting light) to [85](setting light), how fast', '60 % to 85 % in 4 weekly steps'],
    [
      'royal blue channel [40](setting light) to [70](setting light) how fast',
      '40 % to 70 % in [67] weekly steps',
    ],
    ['from [30 %](setting light) to [60 %](setting light), how fast', '30 % to 60 % in [89] weekly steps'],
    [
      'how fast can i go back up from [45](setting light) to [50](setting light)',
      '45 % to 50 % in 2 weekly steps',
    ],
  ])('a rise of the setting is worked out in per cent, and no PAR: %s', (text, words) =>
    expect(marked('light-lamp', text).headline).toMatch(new RegExp(words)),
  );

  it('two channels are no rise', () =>
    expect(
      marked('light-lamp', 'blues [90](setting light) whites [30](setting light) ok?').headline,
    ).not.toMatch(/^Raise|^Lower/));

  it('a colour of the lamp is no second reading in lux', () => {
    const text = '[20000](light) lux under a [14k](setting light) halide';
    expect(marked('lux', text).facts.map(({ label }) => label)).not.toContain('14000 lux');
  });

  it('other readings of one lux meter, as parts of the first', () => {
    const text = 'phone says [20000](light) lux on top, [5000](light) lux on the sand';
    expect(marked('lux', text).facts).toContainEqual({
      label: '5000 lux',
      value: '25 % of the light at 20000 lux, under the same lamp',
    });
  });
});

describe('lamps and light', () => {
  it.each(asked)('%s: %s', (kind, text, pattern) =>
    expect(rowAnswer(lightRows, kind, text)?.headline).toMatch(pattern),
  );

  it('says how 70 per cent was taken', () =>
    expect(rowAnswer(lightRows, 'light-lamp', 'is 70% too strong for my led')?.read).toContain(
      '70 % as the setting of the lamp',
    ));
});
