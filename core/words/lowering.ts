import type { ParameterId } from '../water/parameter.ts';
import type { Heard } from './hear.ts';

/** A wish to have less of something, as patterns of a cleaned text. */
const LOWERS =
  /\b(?:(?:bring(?:ing)?|get(?:ting)?|take|knock|push|pull|keep|come|go|make|drive)\b[^.!?]{0,40}\bdown|lower(?:ing)?|reduc(?:e|ing)|decreas(?:e|ing)|get(?:ting)? rid of|remov(?:e|ing)|cut(?:ting)?|export(?:ing)?|less(?:en)?|too high|(?:way |so |very |really )high|through the roof|off the charts?|skyrocket\w*|sky ?high)\b/;
const RAISES =
  /\b(?:rais(?:e|ing)|increas(?:e|ing)|bump|boost|bring(?:ing)? [^.!?]{0,30}\bup|too low|bottomed)\b/;

const NUTRIENTS: ReadonlySet<ParameterId> = new Set<ParameterId>([
  'nitrate',
  'phosphate',
  'ammonia',
  'nitrite',
]);

/** The nutrients of a sentence that are wished lower: nothing that adds them may be in its answer. */
export function loweredIn({ text, parameters }: Pick<Heard, 'text' | 'parameters'>): readonly ParameterId[] {
  if (!LOWERS.test(text) || RAISES.test(text)) return [];
  return parameters.filter((id) => NUTRIENTS.has(id));
}
