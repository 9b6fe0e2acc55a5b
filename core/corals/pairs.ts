import type { CoralEntry } from './entry.ts';
import { pairRules, type PairRule } from './pair-rules.ts';
import { narrowness, selects } from './selector.ts';

/** A rule as it falls on two corals. */
export interface AppliedRule {
  readonly rule: PairRule;
  /** The coral that plays the rule's `a`, and the other. */
  readonly a: CoralEntry;
  readonly b: CoralEntry;
}

/**
 * Every pair rule that speaks of these two, the narrowest first: a rule about the two kinds stands before one about
 * a family, and that before one about anything. Empty when none does; their own reach still counts then.
 */
export function pairRulesFor(one: CoralEntry, other: CoralEntry): readonly AppliedRule[] {
  return pairRules
    .flatMap((rule): AppliedRule[] => {
      if (selects(rule.a, one) && selects(rule.b, other)) return [{ rule, a: one, b: other }];
      if (selects(rule.a, other) && selects(rule.b, one)) return [{ rule, a: other, b: one }];
      return [];
    })
    .sort((x, y) => width(y.rule) - width(x.rule));
}

/** The wider side decides first: "Galaxea beside anything" gives way to any rule that names both. */
function width(rule: PairRule): number {
  const [a, b] = [narrowness(rule.a), narrowness(rule.b)];
  return Math.min(a, b) * 10 + Math.max(a, b);
}
