import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { escapeText, escapeWithin } from '../../../../bot/discord/message/escape.ts';

/** Source of the syntax: Discord's support article "Markdown Text 101" and its message formatting reference. */
const table: readonly (readonly [string, string])[] = [
  ['*i* **b** _i_ __u__', String.raw`\*i\* \*\*b\*\* \_i\_ \_\_u\_\_`],
  ['~~s~~ ||spoiler||', String.raw`\~\~s\~\~ \|\|spoiler\|\|`],
  ['`code` ```block```', '\\`code\\` \\`\\`\\`block\\`\\`\\`'],
  ['# heading', String.raw`\# heading`],
  ['### heading', String.raw`\### heading`],
  ['-# subtext', String.raw`\-# subtext`],
  ['- item', String.raw`\- item`],
  ['+ item', String.raw`\+ item`],
  ['12. item', String.raw`12\. item`],
  ['> quote', String.raw`\> quote`],
  ['[text](https://x.example)', String.raw`\[text\](https\://x.example)`],
  ['<@1100000000000000012>', '\\<@\u200b1100000000000000012\\>'],
  ['<@!1> <@&2>', '\\<@\u200b!1\\> \\<@\u200b&2\\>'],
  ['<#3> </dose amount:4> <t:0:R> <id:home>', String.raw`\<#3\> \</dose amount:4\> \<t:0:R\> \<id:home\>`],
  ['<:reef:5> <a:reef:6>', String.raw`\<\:reef:5\> \<a\:reef:6\>`],
  [':fish:', String.raw`\:fish:`],
  ['@everyone @here @HERE', '@\u200beveryone @\u200bhere @\u200bHERE'],
  ['back\\slash', String.raw`back\\slash`],
  ['one\ntwo\r\n# three\u2028four', 'one two # three four'],
  ['right\u202eto left', 'right to left'],
  ['torch\u200f: 20, 30 cm', 'torch : 20, 30 cm'],
  ['a\u061cb\u200ec', 'a b c'],
];

/** Ordinary sentences stay as they are. */
const untouched = [
  '6.4 g in 283.9 L',
  '-1.8 °C to 40 °C',
  '8.3 dKH (2.96 meq/L), 50 %',
  'at 20:30, pH 8.2',
  'a@b.example',
  '1.025 kg/L',
];

describe('escapeText', () => {
  it.each(table)('%s', (text, written) => {
    expect(escapeText(text)).toBe(written);
  });

  it.each(untouched)('leaves "%s"', (text) => {
    expect(escapeText(text)).toBe(text);
  });

  it('writes a text alone as it does beside a character that needs care', () => {
    const unit = fc.constantFrom(...'\\*_~|`<>[]#-+@:/!&a1. \n\t\u202e\u0007é°');
    fc.assert(
      fc.property(fc.string({ unit }), (text) => {
        fc.pre(!/^\s*(?:[-+#]|\d+[.)])|^[^!-~]/.test(text));
        expect(`x\\* ${escapeText(text)}`.trim()).toBe(escapeText(`x* ${text}`));
      }),
      { numRuns: 2000 },
    );
  });

  it('leaves no active character bare, whatever is given', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'\\*_~|`<>[]#-@:a1 \n') }), (text) => {
        const bare = escapeText(text).replace(/\\[^\dA-Za-z\s]/g, 'x');
        expect(bare).not.toMatch(/[\\*_~|`<>[\]\n]|^(#|-# |- |> )/);
      }),
    );
  });
});

describe('escapeWithin', () => {
  it('never ends inside an escape or a character', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.integer({ min: 2, max: 60 }), (text, most) => {
        const written = escapeWithin(text, most);
        expect(written.length).toBeLessThanOrEqual(Math.max(most, 1));
        expect(written).not.toMatch(/[\ud800-\udbff]…$/);
        expect(written.replace(/\\[^\dA-Za-z\s]/g, '')).not.toContain('\\');
      }),
    );
  });

  it('keeps as much as fits', () => {
    expect(escapeWithin('abcdefgh', 5)).toBe('abcd…');
    expect(escapeWithin('****', 5)).toBe(String.raw`\*\*…`);
    expect(escapeWithin('abcde', 5)).toBe('abcde');
  });
});
