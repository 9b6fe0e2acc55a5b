import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { complete, type Completions } from '../../../bot/terminal/complete.ts';
import { deskCommands } from '../../../commands/desk.ts';
import { tankCommands } from '../../../commands/tank.ts';
import { sampleCommands, sampleKeep } from './sample.ts';

const keep = sampleKeep();
const tab = (line: string): Completions => complete(line, sampleCommands, keep);

describe('completion', () => {
  it.each<[string, string[], string]>([
    ['', ['/dose ', '/tide ', '/leak ', '/help ', '/quit '], ''],
    ['/', ['dose ', 'tide ', 'leak ', 'help ', 'quit '], ''],
    ['/d', ['dose '], 'd'],
    ['/T', ['tide '], 'T'],
    ['/zz', [], 'zz'],
    ['/dose ', ['amount ', 'pace '], ''],
    ['/dose am', ['amount '], 'am'],
    ['/help dose p', ['pace '], 'p'],
    ['/help ti', ['tide '], 'ti'],
    ['/dose amount ', ['of:', 'now:', 'goal:', 'with:', 'volume:'], ''],
    ['/dose amount go', ['goal:'], 'go'],
    ['/dose amount goal:8 of:x ', ['now:', 'with:', 'volume:'], ''],
    ['/dose amount of:x v', ['volume:'], 'v'],
    ['/dose pace form:', ['flakes', 'powder'], ''],
    ['/dose pace form:fl', ['flakes'], 'fl'],
    ['/dose pace form: fl', ['flakes'], 'fl'],
    ['/dose pace form:flakes', [], 'flakes'],
    ['/dose pace form:flakes d', ['days:'], 'd'],
    ['/dose pace days:3 ', ['form:', 'share:', 'gentle:', 'at:'], ''],
    ['/tide ', [], ''],
    ['my tank is', [], 'my tank is'],
  ])('after %j', (line, offers, replaced) => {
    const [found, part] = tab(line);
    expect(part).toBe(replaced);
    expect([...found].sort()).toEqual([...offers].sort());
  });

  it('offers the units a number can have', () => {
    const [found, part] = tab('/dose amount volume:75 ');
    expect(part).toBe('75 ');
    expect(found).toEqual(expect.arrayContaining(['75 L', '75 US gal', '75 of:']));
  });

  it('offers what can be raised and with what', () => {
    expect(tab('/dose amount of:alk')[0]).toContain('alkalinity');
    expect(tab('/dose amount with:soda a')).toEqual([expect.arrayContaining(['soda ash']), 'soda a']);
  });

  it('offers the names of the own tanks', () => {
    const own = sampleKeep();
    const rest = { kind: 'mixed', netVolumeL: 90, volumeBasis: 'counted', units: {}, targets: {} } as const;
    for (const name of ['Pantry', 'Tide pool', 'Late bloom']) own.addTank({ ...rest, name });
    const offers = (line: string): string[] => complete(line, tankCommands, own)[0];
    expect(offers('/tank show tank:')).toEqual(['Pantry', 'Tide pool', 'Late bloom']);
    expect(offers('/tank show tank:la')).toEqual(['Late bloom']);
    expect(offers('/tank show tank:pan')).toEqual(['Pantry']);
    expect(offers('/tank show tank:tide p')).toEqual(['Tide pool']);
    expect(complete('/tank show tank:', tankCommands, keep)[0]).toEqual([]);
  });

  it('does not offer what only managers of a server can use', () => {
    expect(complete('/', [...deskCommands, ...sampleCommands], keep)[0]).not.toContain('desk ');
  });

  it('takes any line, and replaces only its end', () => {
    const lines = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string().map((text) => `/dose amount of:${text}`),
    );
    fc.assert(
      fc.property(lines, (line) => {
        expect(line.endsWith(tab(line)[1])).toBe(true);
      }),
    );
  });
});
