import { describe, expect, it } from 'vitest';
import { tankSetupRows } from '../../../../commands/ask/rows/tank-setup.ts';
import { findCommand } from '../../../../commands/index.ts';
import { kept, NOW_MS } from './kept.ts';

describe('a tank told of', () => {
  it.each([
    ['i have a 75 gal mixed reef with sump', { volume: '75 gal', kind: 'mixed' }],
    ['new tank: 40 gallon lps, started in march', { volume: '40 gallon', kind: 'large-polyp' }],
    ['set up my tank, 120x50x50 cm with acros', { size: '120 x 50 x 50 cm', kind: 'small-polyp' }],
    ['i run a 75 with a 20 gallon sump', { volume: '75 gallon + 20 gallon' }],
  ])('%s is offered to be kept, and the offer works', (text, input) => {
    const { says, keep } = kept(tankSetupRows);
    const offered = says('tank-setup', text);
    expect(offered?.headline).toMatch(/Nothing is kept yet/);
    expect(keep.tanks()).toHaveLength(1);
    const [yes] = offered?.next ?? [];
    expect(yes?.input).toMatchObject(input);
    const made = { ...yes?.input, name: 'New', measured: 'size' in input ? 'inside' : undefined };
    const given = Object.fromEntries(Object.entries(made).filter(([, value]) => value !== undefined));
    findCommand(['tank', 'new'])?.run(given, { nowMs: NOW_MS, keep });
    expect(keep.tanks().map(({ name }) => name)).toEqual(['Reef', 'New']);
  });

  it('shows the one that is kept', () =>
    expect(kept(tankSetupRows).says('tank-setup', 'show my tank profile')?.headline).toMatch(/^Reef: 300 L/));

  // 1.2 m x 0.5 m x 0.5 m = 300 L to the rim; 3 cm below it 282 L, and 70 L of sump: 352 L.
  it('offers the size and the sump that are said, not the tank that is gone', () => {
    const text =
      'New stand, so new numbers. Display 120 x 50 x 50, sump holds 70 l running, lights at 60 percent. Forget the old 200 l, that went to my brother';
    const given = kept(tankSetupRows).says('tank-setup', text);
    expect(given?.headline).not.toContain('200');
    expect(given?.headline).toContain('It holds about 352 L');
    expect(given?.next[0]?.input).toMatchObject({ size: '120 x 50 x 50 cm', sump: '70 l' });
  });

  it('asks whether sides are cm or inches, and goes on to keep it', () => {
    const given = kept(tankSetupRows).says('tank-setup', 'set up my tank 36 x 18 x 20 please');
    expect(given?.headline).toBe('Are the sides in cm or in inches?');
    expect(given?.next[1]).toMatchObject({ command: 'tank new', input: { size: '36 x 18 x 20 in' } });
  });
});
