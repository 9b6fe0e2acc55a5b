import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heldId, lookId, readHeldId, readLook } from '../../../../bot/discord/asked/held-id.ts';

const ids = fc.stringMatching(/^[A-Za-z0-9_-]{1,40}$/);

describe('custom ids of what is held', () => {
  it('are short and say what they open', () => {
    expect(heldId('k3')).toBe('held:k3');
    expect(lookId({ kind: 'why', id: 'k3' })).toBe('why:k3');
    expect(lookId({ kind: 'more', id: 'k3', page: 2 })).toBe('more:k3:2');
  });

  it('read back to the same, and to nothing else', () => {
    fc.assert(
      fc.property(ids, fc.integer({ min: 1, max: 9999 }), (id, page) => {
        expect(readHeldId(heldId(id))).toBe(id);
        for (const look of [{ kind: 'why', id } as const, { kind: 'more', id, page } as const]) {
          expect(readLook(lookId(look))).toEqual(look);
          expect(readHeldId(lookId(look))).toBeUndefined();
        }
        expect(readLook(heldId(id))).toBeUndefined();
      }),
    );
  });

  it.each([
    '',
    'why:',
    'why:a b',
    'why:a:1',
    'more:a',
    'more:a:0',
    'more:a:-1',
    'more:a:1.5',
    `why:${'a'.repeat(41)}`,
  ])('"%s" is none of ours', (id) => {
    expect(readLook(id)).toBeUndefined();
    expect(readHeldId(id)).toBeUndefined();
  });
});
