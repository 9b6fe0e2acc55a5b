import { describe, expect, it } from 'vitest';
import { overdosed } from '../../../commands/urgent/said.ts';
import { scan } from '../../../core/language/tokens.ts';

describe('what was dosed too much', () => {
  it.each([
    ['i poured the entire iodine bottle in', undefined],
    ['dumped the whole bottle of iron in', undefined],
    ['the doser emptied the bottle of amino acids', undefined],
    ['kids emptied the can of fish food', undefined],
    ['somebody put far too much in', undefined],
    ['my doser ran all night', 'alkalinity'],
    ['a whole cup of bicarb went in', 'alkalinity'],
    ['kalk ran away overnight', 'limewater'],
    ['calcium chloride spilled in', 'calcium'],
  ])('%s', (text, of) => expect(overdosed({ scanned: scan(text), cards: () => [] })).toBe(of));
});
