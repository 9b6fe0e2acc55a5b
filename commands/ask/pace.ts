import { toUnit } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { parameter } from '../../core/water/parameter.ts';
import type { Heard } from '../../core/words/hear.ts';
import { is } from '../../core/words/mention.ts';
import { paceCommand } from '../water/pace.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { compoundsFor } from '../../core/dosing/compound.ts';

const HOW_FAST = [
  'how (?:fast|quick|quickly|slow|slowly)',
  'max(?:imum)?',
  'safe(?:ly)? (?:rate|pace|speed)',
  'too (?:fast|quick|quickly)',
  'most (?:a|per) day',
  'how much (?:a|per) day',
] as const;
const MAY_I = [
  '(?:is it|it) (?:ok|okay|safe|fine|bad)',
  'ok(?:ay)? to',
  'safe to',
  'can (?:i|you|we)',
  'could i',
  'should i',
  'too (?:fast|much)',
] as const;
const MOVES = [
  'salinity',
  'sg',
  'rais(?:e|ing)',
  'increas(?:e|ing)',
  'bring(?:ing)?',
  'bump(?:ing)?',
  'chang(?:e|es|ing)',
  'go(?:ing)? up',
  'mov(?:e|ing)',
  'jump',
  'lower(?:ing)?',
  'drop',
  'up',
] as const;
const SALINITY = /\b(?:salinity|sal|sg|specific gravity)\b/;
const IN_A_DAY =
  /\b(?:in|per|a|over|within) (?:a |one |1 |the same |single )*(?:day|24 ?h(?:ours|rs)?|go|shot|dose|hour|night)\b|\b(?:at once|overnight|all at once|a day)\b/;

/** "how fast can i raise calcium", "is it ok to raise alk 3 dkh in one day": the usual pace, and the step against it. */
export const paceIntent: Intent = (heard, context) => {
  const isAsked =
    says(heard, ...MOVES) &&
    (says(heard, ...HOW_FAST) || (says(heard, ...MAY_I) && IN_A_DAY.test(heard.text)));
  if (!isAsked || heard.said.length > 1 || heard.compounds.length > 0) return undefined;
  if (heard.mentions.some((m) => is(m, 'volume') || is(m, 'share'))) return undefined;
  if (SALINITY.test(heard.text) && heard.parameters.length === 0)
    return call(paceCommand, { of: 'salinity' }, context);
  const [id, other] = heard.parameters;
  if (id === undefined || other !== undefined) return undefined;
  if (limitsOf(id).pace === undefined || compoundsFor(id).length === 0) return undefined;
  return call(paceCommand, { of: id, step: stepOf(heard) }, context);
};

/** The step asked about, in the parameter's own unit: smaller than any level that is kept. */
function stepOf(heard: Heard): string | undefined {
  const [said] = heard.said;
  if (said === undefined || compoundsFor(said.parameter).length === 0) return undefined;
  const { kind, unit } = parameter(said.parameter);
  const [fewest] = limitsOf(said.parameter).believable;
  const { value } = readQuantity(kind, said.mention.text, { field: 'question', fallback: unit });
  const own = toUnit(kind, value, unit);
  const most = said.parameter === 'alkalinity' ? 5 : fewest;
  return own > 0 && (own < most || fewest === 0) ? `${own} ${unit}` : undefined;
}
