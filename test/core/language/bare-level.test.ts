import { describe, expect, it } from 'vitest';
import { lazyReader } from '../../../bot/reader/load.ts';
import { withSpoken } from '../../../core/language/bare-level.ts';
import { noCase, withMoment, type Case } from '../../../core/language/case.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { saidAs } from '../../../core/language/said.ts';
import type { PartName } from '../../../core/language/parts.ts';
import { scan } from '../../../core/language/tokens.ts';
import type { ParameterId } from '../../../core/water/parameter.ts';

function told(...levels: readonly (readonly [ParameterId, number])[]): Case {
  const slots = {
    levels: levels.map(([of, value]) => ({ of, part: 'now' as const, text: String(value), value })),
  };
  return withMoment(noCase, { atMs: 0, kind: 'readings-ok', slots }, 'said');
}

/** A message whose only number plays this part and has no name. */
function bare(text: string, part: PartName): Frame {
  const scanned = scan(text);
  const rest = scanned.numbers.map((number) => saidAs(part, 'nothing', number, 1));
  const reading = { ...lazyReader.read(text), said: rest };
  return { kind: 'told', cards: [], probability: 1, slots: {}, rest, reading };
}

describe('a level without its name', () => {
  it('is of what was spoken of just before', () => {
    const { slots, rest } = withSpoken(bare('and 8.0 this time', 'now'), told(['alkalinity', 8.6]));
    expect(slots.of).toBe('alkalinity');
    expect(slots.now).toBe('8.0');
    expect(rest).toEqual([]);
  });

  it.each([
    ['where several were', told(['alkalinity', 8.6], ['calcium', 420]), 'now'],
    ['far from what was told', told(['calcium', 420]), 'now'],
    ['where it is no level', told(['alkalinity', 8.6]), 'span'],
    ['where nothing was told', noCase, 'now'],
  ] as const)('is left alone %s', (_, before, part) =>
    expect(withSpoken(bare('and 8.0 this time', part), before).slots.of).toBeUndefined(),
  );
});
