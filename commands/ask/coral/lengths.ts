import type { Heard } from '../../../core/words/hear.ts';
import { cm } from '../../../core/corals/say.ts';
import { fixed, toUnit } from '../../../core/quantity/format.ts';
import { readQuantity } from '../../../core/quantity/read.ts';

const LENGTH =
  /(\d+(?:[.,]\d+)?)\s*(?:(cm|mm|centimet(?:re|er)s?|inch(?:es)?|feet|foot|ft)(?![a-z])|(")|(in)(?=\s*(?:apart|between|away|from|gap|of (?:space|room)|off)))/;

/** The first length in the sentence, cm, with what was written. "in" counts only before "apart", "between", ... */
export function lengthIn({ text }: Heard): { readonly cm: number; readonly text: string } | undefined {
  const [, number, unit, quotes, inches] = LENGTH.exec(text) ?? [];
  if (number === undefined) return undefined;
  const written = `${number} ${quotes === undefined ? (unit ?? inches ?? '') : 'in'}`;
  return { cm: readQuantity('length', written, { field: 'question' }).value, text: written };
}

/** "20 cm (8 in)". */
export function cmAndInches(value: number): string {
  return `${cm(value)} (${fixed(toUnit('length', value, 'in'), 1)} in)`;
}
