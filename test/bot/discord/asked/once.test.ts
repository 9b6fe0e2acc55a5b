import { describe, expect, it } from 'vitest';
import { newIds } from '../../../../bot/discord/asked/once.ts';

describe('newIds', () => {
  it('knows an id again, until many others came', () => {
    const isNew = newIds(3);
    expect(['a', 'b', 'a', 'c', 'a', 'd', 'd', 'a', 'b'].map(isNew)).toEqual([
      true,
      true,
      false,
      true,
      false,
      true,
      false,
      true,
      true,
    ]);
  });
});
