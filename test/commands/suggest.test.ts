import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/index.ts';
import { optionsOf, type Option } from '../../commands/options.ts';
import { suggest } from '../../commands/suggest.ts';
import { findCompound } from '../../core/dosing/compound.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { hostileSample } from '../hostile.ts';

const base = { name: 'x', kind: 'string', description: 'x', required: false } as const;
const compound: Option = { ...base, suggest: 'compound' };
const volume: Option = { ...base, suggest: 'unit', quantity: 'volume' };

describe('suggest', () => {
  it('offers compounds that begin with the text before those that hold it', () => {
    const offered = suggest(compound, 'soda');
    expect(offered[0]).toBe('soda ash');
    expect(offered).toContain('baking soda');
    for (const name of offered) expect(findCompound(name), name).toBeDefined();
  });

  it('offers the units a number can have', () => {
    expect(suggest(volume, '75')).toEqual(expect.arrayContaining(['75 L', '75 US gal', '75 imp gal']));
    expect(suggest(volume, '75 i')).toEqual(['75 imp gal', '75 imp fl oz', '75 imp pt']);
  });

  it('every unit offered can be read back', () => {
    for (const value of suggest(volume, '75'))
      expect(readQuantity('volume', value, { field: 'x' }).value).toBeGreaterThan(0);
  });

  it('never offers more than 25, or more than 100 characters, whatever is typed', () => {
    const options = commands.flatMap((command) => optionsOf(command.options));
    for (const [index, typed] of hostileSample(3, 3000).entries()) {
      const option = options[index % options.length];
      if (option === undefined) continue;
      const offered = suggest(option, typed);
      expect(offered.length).toBeLessThanOrEqual(25);
      for (const value of offered) expect(value.length).toBeLessThanOrEqual(100);
    }
  });
});
