import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { callId, readCallId, typedInput } from '../../../../bot/discord/asked/call.ts';
import { demoCommands } from '../demo.ts';

const call = { command: 'dose amount', input: { of: 'calcium', share: '50 %' } };

describe('custom ids', () => {
  it('hold a call in few characters', () => {
    expect(callId(call)).toBe('run:dose amount?of=calcium&share=50 %25');
  });

  it('read back to the same call', () => {
    const short = fc.string({ unit: 'grapheme', maxLength: 20 });
    fc.assert(
      fc.property(
        fc.dictionary(fc.constantFrom('of', 'now', 'goal'), short, { noNullPrototype: true }),
        (input) => {
          const id = callId({ command: 'x y', input });
          fc.pre(id !== undefined);
          expect(readCallId(id ?? '')).toEqual({ command: 'x y', input });
        },
      ),
    );
  });

  it('are held under a short id beyond 100 characters, and left out where nothing can be held', () => {
    const held: unknown[] = [];
    const hold = (each: unknown): string => `h${held.push(each)}`;
    expect(callId({ command: 'x', input: { a: 'y'.repeat(92) } }, hold)).toHaveLength(100);
    expect(held).toEqual([]);
    const long = { command: 'x', input: { a: 'y'.repeat(93) } };
    expect(callId(long, hold)).toBe('held:h1');
    expect(held).toEqual([long]);
    expect(callId(long)).toBeUndefined();
  });

  it.each(['', 'other', 'run:x', 'run:x?a', 'run:x?a=%', 'run:x?a=b=c'])('"%s" is none of ours', (id) => {
    expect(readCallId(id)).toBeUndefined();
  });
});

describe('typedInput', () => {
  it('gives numbers and booleans their kind and leaves what is neither', () => {
    const size = demoCommands.find((command) => command.path[1] === 'size');
    if (size === undefined) throw new Error('no demo command');
    expect(typedInput(size, { volume: '75', share: '12.5', fresh: 'true' })).toEqual({
      volume: '75',
      share: 12.5,
      fresh: true,
    });
    expect(typedInput(size, { share: 'half', fresh: 'maybe', other: '1' })).toEqual({
      share: 'half',
      fresh: 'maybe',
      other: '1',
    });
  });
});
