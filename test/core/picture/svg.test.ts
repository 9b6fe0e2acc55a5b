import { Resvg } from '@resvg/resvg-js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FONT_FAMILY } from '../../../core/picture/palette.ts';
import { cutTo, escapeText, tag, textWidth, words } from '../../../core/picture/svg.ts';

const font = {
  fontFiles: ['node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf'],
  loadSystemFonts: false,
  defaultFontFamily: FONT_FAMILY,
};

function drawn(text: string, size: number): Resvg {
  const place = words(text, { x: 0, y: 100, size, fill: '#000000' });
  return new Resvg(`<svg xmlns="http://www.w3.org/2000/svg" width="3000" height="200">${place}</svg>`, {
    font,
  });
}

describe('escapeText', () => {
  it.each([
    { text: `<b a="1">&'`, expected: '&lt;b a=&quot;1&quot;&gt;&amp;&#39;' },
    { text: 'two\nlines\tand\r\nmore', expected: 'two lines and more' },
    { text: 'a\0b\u0007c', expected: 'abc' },
    { text: 'turn\u202eed \u2066round', expected: 'turned round' },
    { text: 'half \ud83d and \udc20', expected: 'half  and ' },
    { text: 'fish 🐠 stay', expected: 'fish 🐠 stay' },
  ])('$expected', ({ text, expected }) => expect(escapeText(text)).toBe(expected));

  it('any text leaves the drawing well-formed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        expect(() => drawn(text, 20)).not.toThrow();
      }),
    );
  });

  it('the drawing library does refuse what is not well-formed', () => {
    expect(() => new Resvg('<svg xmlns="http://www.w3.org/2000/svg"><text>a & b</text></svg>')).toThrow(
      /entity|ref/i,
    );
  });
});

describe('textWidth', () => {
  // Against the real font, as the drawing library measures it.
  it.each([
    'falling 0.21 dKH a week (0.15 to 0.30)',
    'within error, −0.006 to +0.001 mg/L a week',
    'latest 8.1 on 4 Mar',
    'Magnesium, mg/L',
    'Pantry tank, last 60 days',
    'target 1250 to 1400, below this',
    'WWWWWWWW',
    '22 Feb',
    'Sep 2026',
  ])('%s: at most a quarter too wide, never too narrow', (text) => {
    const real = drawn(text, 24).getBBox()?.width ?? Number.NaN;
    expect(textWidth(text, 24)).toBeGreaterThanOrEqual(real);
    expect(textWidth(text, 24)).toBeLessThan(real * 1.25 + 6);
  });
});

describe('cutTo', () => {
  it('leaves a text that fits', () => expect(cutTo(500, 'Pantry', 24)).toBe('Pantry'));

  it('never leaves more than the width, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 200 }),
        fc.integer({ min: 40, max: 900 }),
        (text, width) => {
          const cut = cutTo(width, text, 24);
          expect(textWidth(cut, 24)).toBeLessThanOrEqual(width);
          expect(cut === text || cut.endsWith('…')).toBe(true);
        },
      ),
    );
  });
});

describe('tag', () => {
  it('rounds numbers to what can be seen, and escapes values', () => {
    expect(tag('circle', { r: 4.123_456, fill: '"x"' })).toBe('<circle r="4.12" fill="&quot;x&quot;"/>');
    expect(tag('g', {}, 'a', 'b')).toBe('<g>ab</g>');
  });
});
