import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/terminal/read.ts';
import { commands } from '../../../commands/index.ts';
import { hurtCard } from '../../../core/care/hurt/cards.ts';
import { urgentCard } from '../../../core/care/urgent/cards.ts';
import { room } from './a-room.ts';

const hot = urgentCard('overheating').first;

describe('first aid in the terminal room is answered whatever was typed', () => {
  it.each([
    ['/urgent what:overheating temperature:100 F volume:75 gal', hot, /100 to 82\.4 °F/],
    ['/urgent what:Overheating volume:', hot, /not used: volume ""/],
    ['/urgent overheating volume:75 gal', hot, /75 US gal/],
    ['/urgent what:overheating vol:75 gal', hot, /not used: vol "75 gal" \(no such option\)/],
    ['/urgent what:overheating volume:75 gal volume:80 gal', hot, /not used: volume "75 gal and 80 gal"/],
    ['/urgent what:overdose of:lots now:14 dKH', urgentCard('overdose').first, /not used: of "lots"/],
    ['/urgent hurt:bite temperature:hot', hurtCard('bite').first, /Moray/],
  ])('%s', async (line, first, pattern) => {
    const shown = (await room().type([line])).replace(/\s+/g, ' ');
    expect(shown).toContain(first);
    expect(shown).toMatch(pattern);
  });

  it('other commands still ask for what they need', () =>
    expect(() => readLine('/dose amount of:', commands)).toThrow('of has no value.'));
});
