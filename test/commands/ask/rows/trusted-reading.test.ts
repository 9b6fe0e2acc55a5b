import { describe, expect, it } from 'vitest';
import { answerTo } from '../said-answer.ts';
import { textOf } from './asked-row.ts';

describe('two readings of one water', () => {
  it('go by the one that is trusted, and never leave it', () => {
    const text =
      'her calibrated gauge says [31](other nothing) where mine says [35](now salinity) and i trust hers. [85 litres](system)';
    const given = answerTo('salinity-adjust', text);
    expect(given.headline).toContain('Salinity 31 ppt is low');
    expect(given.headline).not.toContain('Leave it');
    expect(textOf(given)).toContain('taken as the tank: 31 ppt, which you trust');
  });

  it('are compared where none is', () => {
    const text =
      'mine says [35](now salinity), hers says [31](other salinity), [85 litres](system), raise it?';
    expect(answerTo('salinity-adjust', text).headline).toContain('They are 4 ppt apart');
  });

  it('are no standard because an instrument was calibrated', () => {
    const text =
      'hydrometer [1.026](now salinity), calibrated refractometer [1.022](other salinity) which i trust, how do i raise it';
    expect(textOf(answerTo('instrument', text))).toContain('tank 1.022 SG, that is 29.2 ppt');
  });

  it('of one instrument at two times say that it is steady only', () => {
    const text =
      'swing arm said [1.022](now salinity) the day i got it, [1.022](now salinity) [today](moment)';
    expect(answerTo('instrument', text).headline).toMatch(/^The same number twice says that it is steady/);
  });

  it('on fresh water and on the standard are both used', () => {
    const text =
      'refractometer gives [35.0](other salinity) on the [35](other salinity) standard but [2](other salinity) on RO water';
    expect(answerTo('instrument', text).headline).toContain('right where it matters');
  });
});
