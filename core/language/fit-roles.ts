import { marksOf, type Line, type Mark } from './labelled.ts';
import type { FeatureGroup } from './learn/features.ts';
import { fitted, type Wanted } from './learn/fitted.ts';
import type { Likely } from './likely.ts';
import type { Packed } from './learn/packed.ts';
import { roleFeatures } from './learn/role-features.ts';
import type { Fitting } from './learn/softmax.ts';
import { ofNames, partNames } from './parts.ts';
import { withPart } from './roles.ts';
import { scan } from './tokens.ts';

/** Features kept: what makes the two models 1.2 MB. */
const MOST_PARTS = 28_000;
const MOST_OFS = 10_000;
const PARTS_FITTING: Fitting = { epochs: 8, rate: 0.8, decay: 1e-5, seed: 9, dropped: 0.45, runs: 3 };
const OFS_FITTING: Fitting = { epochs: 12, rate: 0.8, decay: 1e-5, seed: 9, dropped: 0.2 };

/**
 * What the parts of numbers are learnt from: every marked message, three times: by its words alone, with the parts before a
 * number known, and with those on both sides. Without the first, numbers would be read by each other more than by words.
 * `kindsOf` says what each message may want, as weights say it that have not seen it: as sure as they are of a new one.
 */
export function fitRoles(
  lines: readonly Line[],
  kindsOf: (line: Line) => readonly Likely[],
): { readonly parts: Packed; readonly ofs: Packed } {
  const items = lines.flatMap((line) => markedNumbers(line, kindsOf(line)));
  const parts = items.flatMap(({ alone, first, again, mark }): Wanted[] => {
    const target: Wanted['target'] = [[partNames.indexOf(mark.part), 1]];
    return [alone, first, again].map((groups) => ({ groups, target }));
  });
  const ofs = items
    .filter(({ mark }) => mark.part !== 'none' && mark.part !== 'moment')
    .map(({ again, mark }): Wanted => ({
      groups: withPart(again, mark.part),
      target: [[ofNames.indexOf(mark.of), 1]],
    }));
  return {
    parts: fitted(parts, partNames, MOST_PARTS, PARTS_FITTING, 1),
    ofs: fitted(ofs, ofNames, MOST_OFS, OFS_FITTING, 1),
  };
}

/** A number of a marked message: its features without other parts, with those before it, with all, and its mark. */
interface MarkedNumber {
  readonly alone: readonly FeatureGroup[];
  readonly first: readonly FeatureGroup[];
  readonly again: readonly FeatureGroup[];
  readonly mark: Pick<Mark, 'part' | 'of'>;
}

/** One that no mark covers plays no part. */
function markedNumbers(line: Line, kinds: readonly Likely[]): readonly MarkedNumber[] {
  const marks = marksOf(line);
  if (marks === undefined) return [];
  const scanned = scan(line.text);
  const numbers = scanned.tokens.flatMap(({ number, start, end }, at) => {
    if (number === undefined) return [];
    const found = marks.find((mark) => mark.start < end && start < mark.end);
    const unmarked = { part: number.form === 'moment' ? 'moment' : 'none', of: 'nothing' } as const;
    return [{ at, mark: found ?? unmarked }];
  });
  const parts = numbers.map(({ mark }) => mark.part);
  return numbers.map(({ at, mark }, n) => {
    const before = parts.slice(0, n);
    const alone = roleFeatures({ scanned, kinds, at, before: undefined });
    const first = roleFeatures({ scanned, kinds, at, before });
    const again = roleFeatures({ scanned, kinds, at, before, after: parts.slice(n + 1) });
    return { alone, first, again, mark };
  });
}
