import { basisName } from '../../core/corals/basis-words.ts';
import type { Bases } from '../../core/corals/basis.ts';
import type { CoralEntry } from '../../core/corals/entry.ts';
import { flowWords } from '../../core/corals/rules/flow.ts';
import { cm } from '../../core/corals/say.ts';
import type { Suits } from '../../core/corals/suits.ts';
import { brokenLine } from '../../core/words/broken-line.ts';
import type { Fact } from '../answer.ts';
import { FACT_LETTERS } from './short-first.ts';

export function fits({ against }: Suits): boolean {
  return against.length === 0;
}

/** What it needs, and what is to mind; or why it does not fit. */
export function suitsFact(one: Suits): Fact {
  const { entry, against, watch } = one;
  const label = entry.names.common[0];
  const fitting = (parts: readonly string[]) =>
    brokenLine(parts.join('; '), FACT_LETTERS - label.length - 2)[0];
  if (!fits(one)) return { label, value: fitting(against), verdict: 'does not fit' };
  const { hardiness } = entry;
  return watch.length === 0
    ? { label, value: `${hardiness.value}; ${lightWords(entry)}; ${flowWords(entry)} flow`, verdict: 'fits' }
    : {
        label,
        value: fitting([hardiness.value, lightWords(entry), ...new Set(watch)]),
        verdict: 'fits, with care',
      };
}

function lightWords({ light, photosynthetic }: CoralEntry): string {
  return photosynthetic ? `${light.lowPpfd} to ${light.highPpfd} PAR` : 'lives by food';
}

/** The rest of it, with what its numbers rest on. */
export function careLine({ entry, watch }: Suits): string {
  const { names, light, sting, photosynthetic } = entry;
  const begins = photosynthetic ? `begins near ${light.startPpfd} PAR; ` : '';
  const words = `${names.common[0]}: ${begins}${flowWords(entry)} flow; ${cm(sting.keepClearCm)} clear (${basisName(...basesOf(entry))})`;
  return watch.length === 0 ? words : `${words}. Mind: ${[...new Set(watch)].join('; ')}`;
}

function basesOf({ light, flow, hardiness, sting }: CoralEntry): readonly Bases[] {
  return [hardiness.basis, light.basis, flow.basis, sting.keepClearBasis];
}
