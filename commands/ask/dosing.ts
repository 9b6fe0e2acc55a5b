import { findCompound } from '../../core/dosing/compound.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { saidOf, type Heard, type Said } from '../../core/words/hear.ts';
import { loweredIn } from '../../core/words/lowering.ts';
import { is } from '../../core/words/mention.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import type { Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { amountCommand } from '../dose/amount.ts';
import { limewaterCommand } from '../dose/limewater.ts';
import { zeroNutrients } from '../dose/zero-nutrients.ts';
import { call } from './call.ts';
import { effect } from './effect.ts';
import { says, type Intent } from './intent.ts';
import { withRemarks } from './remarks.ts';
import { wanted, type Wanted } from './wanted.ts';

/** "I added 20 g and it went from 7.4 to 8.1": it is in already, so no dose from the one to the other. */
const DONE =
  /\b(?:added|dosed|put in|put)\b[^.!?]*\b(?:went|rose|jumped|climbed|came up|moved|is now)\b|\bafter (?:adding|dosing|i (?:added|dosed|put))\b/;

/** "raise alk 7.2 to 8.4 in 75 gal with soda ash". */
export const doseIntent: Intent = (heard, context) => {
  const done = DONE.test(heard.text) ? effect(heard, context) : undefined;
  if (done !== undefined) return done;
  const [change, ...rest] = wanted(heard);
  if (change === undefined) return undefined;
  const compound = compoundFor(heard, change.of);
  const input = {
    of: change.of,
    now: change.now,
    goal: change.goal,
    with: compound,
    volume: tankVolume(heard)?.text,
    salinity: saidOf(heard, 'salinity').find(({ role }) => role === 'plain')?.mention.text,
  };
  const given = withOthers(heard, rest, withRemarks(heard, call(amountCommand, input, context)));
  const others = effect(heard, context);
  if (others === undefined) return given;
  const facts = [...given.facts, { label: 'The amount you name', value: others.headline }];
  const short = heard.mentions.find(({ text }) => /^[\d.,]+ ?g$/.test(text));
  if (input.volume !== undefined || short === undefined) return { ...given, facts };
  const step = `If ${short.text} is the tank and not the powder, write it as gallons: "${short.text.replace(/ ?g$/, '')} gal".`;
  return { ...given, facts, steps: [step, ...given.steps] };
};

/** What else was asked: said, and one press away, since each dose is an answer of its own. */
function withOthers(heard: Heard, rest: readonly Wanted[], given: Answer): Answer {
  const volume = tankVolume(heard)?.text;
  if (rest.length === 0) return given;
  const named = rest.map(
    ({ of, now, goal }) => `${parameter(of).label} ${now === undefined ? '' : `${now} to `}${goal}`,
  );
  const next = rest.map(({ of, now, goal }, index) => {
    const found = { of, now, goal, with: compoundFor(heard, of), volume };
    const said = Object.entries(found).filter((entry): entry is [string, string] => entry[1] !== undefined);
    return action(`And ${named[index] ?? ''}`, 'dose amount', Object.fromEntries(said));
  });
  const step = `This is for one of them: ${named.join(' and ')} is a dose of its own. Choose it below, and add them well apart.`;
  return { ...given, steps: [step, ...given.steps], next: [...given.next, ...next] };
}

/** The named compound that raises the parameter; a name with several forms counts if one of them does. */
export function compoundFor(heard: Heard, id: ParameterId): string | undefined {
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
  return withRemarks(heard, call(limewaterCommand, input, context));
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
  return withRemarks(heard, call(limewaterCommand, { amount: batch.text }, context));
};

/** "no3 and po4 both read zero, should I dose?": what +1 nitrate and +0.03 phosphate would take. */
export const zeroNutrientsIntent: Intent = (heard, context) => {
  const both = heard.parameters.includes('nitrate') && heard.parameters.includes('phosphate');
  if (loweredIn(heard).length > 0) return undefined;
  if (!both || !readsZero(heard) || !says(heard, 'dose', 'dosing', 'add', 'raise')) return undefined;
  const volume = tankVolume(heard)?.text;
  return withRemarks(heard, zeroNutrients(volume, context));
};

/** Zero in words, or as a number of its own where no reading says otherwise. */
function readsZero(heard: Heard): boolean {
  const isPast = says(heard, 'after (?:being|reading)', 'used to be', 'down from', 'was', 'were');
  if (says(heard, 'zero', 'zeros', 'undetectable', 'bottomed')) return isPast || heard.said.every(isNone);
  return says(heard, '0') && heard.said.every(isNone);
}

/** A reading a kit cannot tell from none. */
function isNone({ parameter: id, mention }: Said): boolean {
  return mention.value < parameter(id).kitResolution;
}
