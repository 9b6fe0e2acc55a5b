import { calledAs, typedNames } from '../core/corals/typed-names.ts';
import type { Answer, Fact } from './answer.ts';
import type { Asking, RawInput } from './command.ts';
import { inOwnUnits } from './in-own-units.ts';
import { withSentences } from './sentences.ts';

/**
 * An answer as its asker says it: amounts in their units, corals by the names they typed. Every platform does this once,
 * with what was typed and what came of it. What was read of them stays in full.
 */
export function forAsker<Given extends Answer>(given: Given, typed: string, asking: Asking): Given {
  const shown = inOwnUnits(given, typed, asking);
  const names = typedNames(typed);
  if (names.length === 0) return shown;
  const text = (line: string): string => calledAs(line, names);
  const facts = shown.facts.map((fact): Fact => ({ ...fact, label: text(fact.label) }));
  return { ...withSentences({ ...shown, facts }, text), read: shown.read };
}

/** What was typed into the options of a command. */
export function wordsOf(input: RawInput): string {
  return Object.values(input)
    .filter((value) => typeof value === 'string')
    .join('; ');
}
