import type { Heard } from '../../../core/words/hear.ts';
import { gapOf, type Gap } from '../../coral/gap.ts';

const LENGTH =
  /(\d+(?:[.,]\d+)?)\s*(?:(cm|mm|centimet(?:re|er)s?|inch(?:es)?|feet|foot|ft)(?![a-z])|(")|(in)(?=\s*(?:apart|between|away|from|gap|of (?:space|room)|off)))/;

/** The first length in the sentence, cm, with what was written. "in" counts only before "apart", "between", ... */
export function lengthIn({ text }: Heard): Gap | undefined {
  const [, number, unit, quotes, inches] = LENGTH.exec(text) ?? [];
  if (number === undefined) return undefined;
  const written = `${number} ${quotes === undefined ? (unit ?? inches ?? '') : 'in'}`;
  return gapOf(written);
}
