import { significant, toUnit } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { parameter } from '../../core/water/parameter.ts';
import { salinityPaceWords } from '../../core/water/salinity-pace.ts';
import type { Heard } from '../../core/words/hear.ts';
import { is } from '../../core/words/mention.ts';
import { answer, type Answer } from '../answer.ts';
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
export const paceIntent: Intent = (heard) => {
  const isAsked =
    says(heard, ...MOVES) &&
    (says(heard, ...HOW_FAST) || (says(heard, ...MAY_I) && IN_A_DAY.test(heard.text)));
  if (!isAsked || heard.said.length > 1 || heard.compounds.length > 0) return undefined;
  if (heard.mentions.some((m) => is(m, 'volume') || is(m, 'share'))) return undefined;
  if (SALINITY.test(heard.text) && heard.parameters.length === 0) return salinityPace();
  const [id, other] = heard.parameters;
  if (id === undefined || other !== undefined) return undefined;
  const { label, unit } = parameter(id);
  const { pace } = limitsOf(id);
  if (pace === undefined || compoundsFor(id).length === 0) return undefined;
  const usual = pace.gentle === undefined ? `${pace.up}` : `${pace.gentle} to ${pace.up}`;
  const step = stepOf(heard);
  const verdict =
    step === undefined
      ? ''
      : step > pace.up * 1.02
        ? `No, not ${significant(step, 3)} ${unit} in one day: take ${Math.ceil(step / pace.up - 0.02)} days or more. `
        : `Yes: ${significant(step, 3)} ${unit} in a day is within the usual pace. `;
  return answer({
    headline: `${verdict}At most ${usual} ${unit} of ${label} a day is usual (common practice), in several parts.`,
    read: [`how fast ${label} may be raised`],
    steps: [
      'Test again before the next day’s part.',
      `With now, goal, volume and salt I work out the days: "raise ${label} from ... to ... in 75 gal with ...".`,
    ],
    cautions: [
      'Going down is not done by dosing: stop what raises it, and let use or water changes take it down slowly.',
    ],
    sources: ['practice'],
  });
};

function salinityPace(): Answer {
  const { up, down } = salinityPaceWords;
  return answer({
    headline: `At most ${down} a day downward and ${up} upward is usual with corals (common practice).`,
    read: ['how fast salinity may be moved'],
    steps: [
      'Check the instrument on a 35 ppt standard first.',
      'With what it reads, the goal and the volume I work out the days: "1.028 to 1.025 in 75 gal".',
    ],
    sources: ['practice'],
  });
}

/** The step asked about, in the parameter's own unit: smaller than any level that is kept. */
function stepOf(heard: Heard): number | undefined {
  const [said] = heard.said;
  if (said === undefined || compoundsFor(said.parameter).length === 0) return undefined;
  const { kind, unit } = parameter(said.parameter);
  const [fewest] = limitsOf(said.parameter).believable;
  const { value } = readQuantity(kind, said.mention.text, { field: 'question', fallback: unit });
  const own = toUnit(kind, value, unit);
  const most = said.parameter === 'alkalinity' ? 5 : fewest;
  return own > 0 && (own < most || fewest === 0) ? own : undefined;
}
