import { describe, expect, it } from 'vitest';
import { plainText } from '../../../../bot/discord/menu/plain-text.ts';

describe('what someone wrote on Discord', () => {
  // The forms in angle brackets are those of Discord's reference on message formatting (from memory).
  it.each([
    ['<@1100000000000000012> alk 8', 'alk 8'],
    ['<@!1100000000000000012> alk 8', 'alk 8'],
    ['<@&1100000000000000302> alk 8', 'alk 8'],
    ['alk 8 in <#1100000000000000201>', 'alk 8 in'],
    ['alk 8 <:fish8:1100000000000000900> <a:wave:1100000000000000901>', 'alk 8'],
    ['alk 8 <t:1700000000:R>', 'alk 8'],
    ['</log add:1100000000000000903> alk 8', 'alk 8'],
    ['alk 8 https://example.org/420/8.png', 'alk 8'],
    ['**alk** 8 ||ca 420|| `mg 1350`', 'alk  8  ca 420   mg 1350'],
    ['> alk 8\n- ca 420\n## mg 1350\n-# ph 8.1', 'alk 8\nca 420\nmg 1350\nph 8.1'],
  ])('%j is %j', (written, read) => expect(plainText(written)).toBe(read));

  it.each(['alk ~8', 'po4 <0.02 no3 >5', '3 * 20 L', 'temp -1', 'a_b', 'sg 1.025 @ 78f', 'no3<5, ca>420'])(
    'leaves %j as it is',
    (text) => expect(plainText(text)).toBe(text),
  );
});
