import { findCompound } from '../../core/dosing/compound.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import type { Heard, Said } from '../../core/words/hear.ts';
import { is } from '../../core/words/mention.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import type { Answer } from '../answer.ts';
import { call } from './call.ts';
import { effect } from './effect.ts';
import { says, type Intent } from './intent.ts';
import { withRemarks } from './remarks.ts';

/** Parameters a dose can raise. */
const DOSED: readonly ParameterId[] = [
  'alkalinity',
  'calcium',
  'magnesium',
  'potassium',
  'strontium',
  'bromide',
  'iodine',
  'nitrate',
  'phosphate',
];

/** "raise alk 7.2 to 8.4 in 75 gal with soda ash". */
export const doseIntent: Intent = (heard, context) => {
  const change = wanted(heard);
  if (change === undefined) return undefined;
  const compound = compoundFor(heard, change.of);
  const input = {
    of: change.of,
    now: change.now,
    goal: change.goal,
    with: compound,
    volume: tankVolume(heard)?.text,
  };
  const given = withRemarks(heard, call('dose amount', input, context));
  const others = effect(heard, context);
  if (others === undefined) return given;
  return { ...given, facts: [...given.facts, { label: 'The amount you name', value: others.headline }] };
};

interface Wanted {
  readonly of: ParameterId;
  /** Undefined where only a rise was said: goal is then "+2 dKH". */
  readonly now: string | undefined;
  readonly goal: string;
}

/** A bare number in the unit answers are given in. */
function withUnit(text: string, id: ParameterId): string {
  return /^[\d.,]+$/.test(text) ? `${text} ${parameter(id).unit}` : text;
}

/** The first parameter said with a lower and a higher number, the higher one to be reached. */
function wanted(heard: Heard): Wanted | undefined {
  for (const id of DOSED) {
    const said = heard.said.filter((each) => each.parameter === id);
    const step = said.find(({ role }) => role === 'step');
    if (step !== undefined && says(heard, 'raise', 'bump', 'up', 'increase', 'add', 'go up')) {
      return { of: id, now: undefined, goal: `+${withUnit(step.mention.text, id)}` };
    }
    const pair = fell(heard, said) ?? towards(said);
    if (pair !== undefined && pair.goal.mention.value > pair.now.mention.value) {
      return { of: id, now: pair.now.mention.text, goal: pair.goal.mention.text };
    }
  }
  return undefined;
}

/** "fell 9.3 -> 7.5": the second number is the reading, the first where it should be. */
function fell(heard: Heard, said: readonly Said[]): { now: Said; goal: Said } | undefined {
  const [first, second] = said;
  if (first === undefined || second === undefined || second.mention.value >= first.mention.value)
    return undefined;
  const lead = heard.text.slice(Math.max(0, first.mention.start - 24), first.mention.start);
  const sank = /\b(?:fell|dropped|crashed|sank|slid|went down|went from|is down)\b/.test(lead);
  return sank ? { now: second, goal: first } : undefined;
}

function towards(said: readonly Said[]): { now: Said; goal: Said } | undefined {
  const goal = said.findLast(({ role }) => role === 'goal');
  const now = said.find(({ role }) => role === 'plain' || role === 'before');
  return goal === undefined || now === undefined ? undefined : { now, goal };
}

/** The named compound that raises the parameter; a name with several forms counts if one of them does. */
function compoundFor(heard: Heard, id: ParameterId): string | undefined {
  return heard.compounds.find(({ name }) => {
    const found = findCompound(name);
    const forms = found === undefined ? [] : 'atoms' in found ? [found] : found;
    return forms.some(({ raises }) => raises.includes(id));
  })?.name;
}

/** "1 gal evaporates a day, can kalk in the top-off cover 0.6 dkh a day". */
export const limewaterIntent: Intent = (heard, context) => {
  if (!says(heard, 'kalk', 'kalkwasser', 'limewater', 'lime')) return undefined;
  const use = heard.said.find((each) => each.parameter === 'alkalinity' && each.everyDays !== undefined);
  const topOff = heard.mentions.find(
    (m) =>
      is(m, 'volume') &&
      /^\s*(?:evap|a day|per day|\/ ?day|of (?:top|evap)|top)/.test(heard.text.slice(m.end)),
  );
  if (use === undefined || topOff === undefined) return undefined;
  const input = { amount: topOff.text, goal: use.mention.text, volume: tankVolume(heard)?.text };
  return withRemarks(heard, call('dose limewater', input, context));
};

/** "making 30 L of limewater with 30 tsp lime": what a batch can hold. */
export const limewaterBatchIntent: Intent = (heard, context) => {
  const lime = says(heard, 'kalk', 'kalkwasser', 'limewater', 'lime');
  const asks = says(
    heard,
    'how much',
    'making',
    'mix',
    'mixing',
    'batch',
    'barrel',
    'bucket',
    'container',
    'saturated',
  );
  const batch = heard.mentions.find((m) => is(m, 'volume') && !/(?:ml|tsps?|tbsps?|cups?)$/.test(m.text));
  if (!lime || !asks || batch === undefined) return undefined;
  return withRemarks(heard, call('dose limewater', { amount: batch.text }, context));
};

/** "no3 and po4 both read zero, should I dose?": what +1 nitrate and +0.03 phosphate would take. */
export const zeroNutrientsIntent: Intent = (heard, context) => {
  const both = heard.parameters.includes('nitrate') && heard.parameters.includes('phosphate');
  if (
    !both ||
    !says(heard, 'zero', 'zeros', '0', 'undetectable', 'bottomed') ||
    !says(heard, 'dose', 'dosing', 'add', 'raise')
  )
    return undefined;
  const volume = tankVolume(heard)?.text;
  const nitrate = call(
    'dose amount',
    { of: 'nitrate', now: '0 ppm', goal: '1 ppm', with: 'sodium nitrate', volume },
    context,
  );
  const phosphate = call(
    'dose amount',
    { of: 'phosphate', now: '0 ppm', goal: '0.03 ppm', with: 'monosodium phosphate', volume },
    context,
  );
  return withRemarks(heard, joined(nitrate, phosphate));
};

function joined(first: Answer, second: Answer): Answer {
  const both = <K extends 'read' | 'working' | 'cautions' | 'sources'>(key: K): Answer[K] =>
    [...new Set([...first[key], ...second[key]])] as unknown as Answer[K];
  return {
    ...first,
    headline: `Feed before you dose. If you dose: ${first.headline} ${second.headline}`,
    read: both('read'),
    facts: [...first.facts, ...second.facts],
    steps: [
      'Test again: zero on a hobby kit means below its limit, not none. Algae take nutrients up before a test can see them.',
      'Feed the fish a little more or more often, skim less, take out phosphate media; pull the red growth by hand.',
      ...new Set([...first.steps, ...second.steps]),
    ],
    working: both('working'),
    cautions: both('cautions'),
    sources: both('sources'),
  };
}
