import { readLogged } from '../../core/log/value.ts';
import type { Value } from '../../core/water/assess.ts';
import type { ParameterId } from '../../core/water/parameter.ts';
import { saidOf, type Heard, type Said } from '../../core/words/hear.ts';
import { answer, type Answer } from '../answer.ts';
import { judgedAnswer } from '../checkup/judged.ts';
import { ageSteps, PH_BY_AIR, type Told } from '../checkup/beside-numbers.ts';
import { says, type Intent } from './intent.ts';
import type { Mention } from '../../core/words/mention.ts';
import { troubleIn } from '../../core/words/trouble.ts';
import { saidBeside } from '../../core/words/neutral.ts';

/** How many readings make a line of readings rather than a question about one of them. */
const LINE = 4;

/** What nothing is dosed for: asked to be moved, it is judged, and the answer says what moves it. */
const UNDOSED: ReadonlySet<string> = new Set(['ph', 'temperature', 'ammonia', 'nitrite']);

/** Ammonia put in on purpose, to start a filter: no reading of a tank with animals. */
const FISHLESS = [
  'fishless',
  'ammonium chloride',
  'dose ammonia',
  'dosing ammonia',
  'start (?:a |the |my )?cycle',
];

/** A pasted line of readings: each judged, the doubtful first, then what to do, often nothing. */
export const readingsIntent: Intent = (heard) => judged(heard, LINE);

/** "my alk is 6.5, what's up": one or two readings and no other question. */
export const readingIntent: Intent = (heard) => judged(heard, 1);

/** "is 1.022 too low": a salinity asked to be judged, not converted. */
export const salinityJudgedIntent: Intent = (heard) =>
  says(
    heard,
    'too (?:low|high|salty)',
    'low',
    'high',
    'ok(?:ay)?',
    'fine',
    'alright',
    'normal',
    'bad',
    'safe',
    'good',
    'wrong',
    'problem',
    'dead',
    'dying',
    'died',
    'sick',
  )
    ? judged(heard, 1, true)
    : undefined;

function judged(heard: Heard, fewest: number, salinityAlone = false): Answer | undefined {
  const wished = heard.said.filter(({ role }) => role === 'goal' || role === 'step');
  if (wished.some(({ parameter: id }) => !UNDOSED.has(id))) return undefined;
  const values = firstOfEach(heard);
  if (values.every(({ parameter: id }) => id === 'ammonia') && says(heard, ...FISHLESS)) return undefined;
  if (values.length === 0 && heard.said.some(isPhWish))
    return answer({ headline: PH_BY_AIR, sources: ['practice'] });
  const onlySalinity = saidOf(heard, 'salinity').length === heard.said.length;
  if (values.length < fewest || (onlySalinity && !salinityAlone)) return undefined;
  const unused = unusedIn(heard, values);
  return judgedAnswer({
    values,
    read: [...values.flatMap(({ notes }) => notes), ...unused.map((text) => `not used: ${text}`)],
    unused,
    trouble: troubleIn(heard.text),
    beside: saidBeside(heard.text),
    steps: [
      ...(wished.some(({ parameter: id }) => id === 'ph') ? [PH_BY_AIR] : []),
      ...ageSteps(values, told(heard)),
    ],
  });
}

/** "raise pH .2": no water reads that, so it is how far. */
function isPhWish({ parameter: id, mention, role }: Pick<Said, 'parameter' | 'mention' | 'role'>): boolean {
  return id === 'ph' && (mention.value < 2 || role === 'goal' || role === 'step');
}

/** "between 0 and 5", "0-5": the zero of a span, and no reading of none. */
function isOpenEnd(text: string, { value, end }: Mention): boolean {
  return value === 0 && /^\s*(?:-|to|and|or)\s*\.?\d/.test(text.slice(end));
}

interface NotedValue extends Value {
  readonly notes: readonly string[];
  readonly mention: Mention;
}

/** The numbers of the sentence that no judged reading was made of, nor repeat one. */
function unusedIn({ mentions }: Heard, values: readonly NotedValue[]): readonly string[] {
  return mentions
    .filter((mention) => !values.some((value) => value.mention.value === mention.value))
    .map(({ text }) => `"${text}"`);
}

/** The first number said of each parameter, in its own unit; a line pasted twice counts once. */
function firstOfEach(heard: Heard): NotedValue[] {
  const seen = new Map<ParameterId, NotedValue>();
  for (const { parameter: id, mention, role, everyDays } of heard.said) {
    if (everyDays !== undefined) continue;
    if (role === 'before' && saidOf(heard, id).length > 1) continue;
    if (role === 'goal' || role === 'step' || isPhWish({ parameter: id, mention, role })) continue;
    if (seen.has(id) || role === 'rise' || role === 'use' || isOpenEnd(heard.text, mention)) continue;
    seen.set(id, { parameter: id, mention, ...readLogged(id, mention.text, id) });
  }
  return [...seen.values()];
}

function told(heard: Heard): Told {
  return {
    isYoung: says(
      heard,
      String.raw`(?:a |one |two |[1-8] )?(?:day|week|month)s?[- ]old`,
      'new tank',
      'just cycled',
    ),
    isForCorals: says(heard, 'add', 'coral', 'corals', 'acros?', 'acropora', 'sps', 'lps', 'ready'),
  };
}
