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
});
