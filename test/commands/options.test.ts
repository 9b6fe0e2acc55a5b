import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { optionsOf, quantityOption, textOption, validate } from '../../commands/options.ts';
import type { Problem } from '../../core/problem.ts';
import { problemOf } from './text.ts';

const schema = z.strictObject({
  pace: z.enum(['usual', 'gentle']).describe('How fast').optional(),
  of: textOption('What', { suggest: 'parameter' }),
  volume: quantityOption('volume', 'How much water').optional(),
  days: z.int().min(1).max(30).describe('How long').default(7),
  twice: z.boolean().describe('Two times').optional(),
});

const refused = (input: Record<string, unknown>): Problem => problemOf(() => validate(schema, input));

describe('optionsOf', () => {
  it('lists the required first, with everything a platform needs', () => {
    expect(optionsOf(schema)).toEqual([
      {
        name: 'of',
        kind: 'string',
        description: 'What',
        required: true,
        maxLength: 200,
        suggest: 'parameter',
      },
      {
        name: 'pace',
        kind: 'string',
        description: 'How fast',
        required: false,
        choices: ['usual', 'gentle'],
      },
      {
        name: 'volume',
        kind: 'string',
        description: 'How much water',
        required: false,
        maxLength: 200,
        suggest: 'unit',
        quantity: 'volume',
      },
      {
        name: 'days',
        kind: 'integer',
        description: 'How long',
        required: false,
        default: 7,
        min: 1,
        max: 30,
      },
      { name: 'twice', kind: 'boolean', description: 'Two times', required: false },
    ]);
  });

  it('refuses an option nobody described', () => {
    expect(() => optionsOf(z.strictObject({ x: z.string() }))).toThrow('description');
  });
});

describe('validate', () => {
  it('trims, fills in defaults and types what it returns', () => {
    expect(validate(schema, { of: '  alk ' })).toEqual({ of: 'alk', days: 7 });
  });

  const wrong: { input: Record<string, unknown>; field: string; limit: string | undefined }[] = [
    { input: {}, field: 'of', limit: undefined },
    { input: { of: 'x', pace: 'wild' }, field: 'pace', limit: 'usual, gentle' },
    { input: { of: 'x', days: 99 }, field: 'days', limit: '1 to 30' },
    { input: { of: 'x', days: '7' }, field: 'days', limit: '1 to 30' },
    { input: { of: 'x'.repeat(201) }, field: 'of', limit: 'at most 200 characters' },
    { input: { of: 'x', colour: 'red' }, field: 'colour', limit: 'pace, of, volume, days, twice' },
  ];
  it.each(wrong)('names $field', ({ input, field, limit }) => {
    const problem = refused(input);
    expect(problem.field).toBe(field);
    if (field === 'colour') expect(problem.limit?.split(', ').sort()).toEqual(limit?.split(', ').sort());
    else expect(problem.limit).toBe(limit);
  });

  it('says what a missing option is for', () => expect(refused({}).hint).toBe('What'));
});
