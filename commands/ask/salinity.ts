import { saidOf, type Heard } from '../../core/words/hear.ts';
import { is, type Mention } from '../../core/words/mention.ts';
import { leadOf } from '../../core/words/roles.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { adjustCommand } from '../salinity/adjust.ts';
import { checkCommand } from '../salinity/check.ts';
import { convertSalinityCommand } from '../salinity/convert.ts';
import { mixCommand } from '../salinity/mix.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';
import { remarkIn } from './guards.ts';

/** "1.027 on the 35 ppt fluid", "1.028 with cal fluid": what the standard shows stands before it. */
const ON_STANDARD =
  /^\s*(?:on|in|with|for|at|using)\s+(?:the |my |a )?(?:35\s*ppt\s*)?(?:cal\w* |ref\w* |test )?(?:fluid|standard|solution)/;

/** "refractometer 1.026, the 35 ppt fluid reads 1.028": what the tank really is. */
export const instrumentIntent: Intent = (heard, context) => {
  if (!says(heard, 'cal(?:ibration)? ?(?:fluid|solution)?', 'calibrat\\w+', 'standard', 'fluid'))
    return undefined;
  const standard =
    heard.mentions.find((m) => isGravity(m) && ON_STANDARD.test(heard.text.slice(m.end))) ??
    reading(
      heard,
      /\b(?:fluid|standard|solution|it)\b(?![^.!?]*\b(?:tank|sample|display)\b)[^.!?]{0,30}\b(?:reads?|shows?|says|is)\b/,
    );
  const tank =
    reading(heard, /\b(?:tank|sample|display)\b/, standard) ??
    reading(heard, /\b(?:refract\w*|refractometer|probe|meter)\b/, standard);
  if (standard === undefined || tank === undefined) return undefined;
  return call(checkCommand, { reading: tank.text, standard: standard.text }, context);
};

function isGravity(mention: Mention): boolean {
  return is(mention, 'salinity') && mention.value < 2;
}

/** The salinity written in a gravity whose lead names an instrument or the standard. */
function reading(heard: Heard, lead: RegExp, not?: Mention): Mention | undefined {
  return heard.mentions.find(
    (m, index) => m !== not && isGravity(m) && lead.test(leadOf(heard.text, heard.mentions, index)),
  );
}

/** "probe shows 45 mS, is that 35 ppt?" */
export const conductivityIntent: Intent = (heard, context) => {
  const measured = heard.mentions.find((m) => is(m, 'conductivity'));
  if (measured === undefined) return undefined;
  const temperature = heard.mentions.find((m) => is(m, 'temperature'))?.text;
  return call(checkCommand, { reading: measured.text, temperature }, context);
};

/** "15 cups of mix in a 30 gal bin for 35 ppt": salt for a batch. */
export const mixIntent: Intent = (heard, context) => {
  const salt = says(heard, 'salt', 'mix', 'mixing', 'cups?');
  const asks = says(heard, 'how much salt', 'cups?', 'grams', 'kg', 'lbs?', 'new batch');
  const tank = tankVolume(heard);
  const levels = saidOf(heard, 'salinity');
  if (!salt || !asks || heard.compounds.length > 0 || levels.length > 1) return undefined;
  const perLitre = /\b(?:per|a|each) (?:litre|liter|l|gallon|gal)\b/.exec(heard.text)?.[0];
  const batch = tank?.text ?? (perLitre === undefined ? undefined : `1 ${perLitre.replace(/^\w+ /, '')}`);
  if (batch === undefined) return undefined;
  const [goal] = levels;
  const amount = heard.mentions.find(
    (m) => /cups?$/.test(m.text) || (is(m, 'mass') && !is(m, 'volume')),
  )?.text;
  return call(mixCommand, { volume: batch, goal: goal?.mention.text, amount }, context);
};

const MOVES = [
  'to',
  'raise',
  'lower',
  'bring',
  'down',
  'up',
  'drop',
  'increase',
  'reduce',
  'get',
  'from',
  'should be',
  'how much',
  'how many',
];
/** "dropped from 1.026 to 1.023": the second is what it reads now, the first where it was. */
const MOVED =
  /\b(?:dropped|fell|went|swung|swings?|crept|rose|climbed|jumped|drifted|crashed|spiked)\b[^.!?]{0,20}\bfrom\s+[\d.]+[^.!?]{0,12}\bto\b/;

/** "1.030, 55 gal, want 1.026": one swap and a day plan. */
export const adjustIntent: Intent = (heard, context) => {
  const said = saidOf(heard, 'salinity');
  const [was, reads, wish] = said;
  if (MOVED.test(heard.text) && was !== undefined && reads !== undefined) {
    const back = { now: reads.mention.text, goal: (wish ?? was).mention.text };
    return call(adjustCommand, { ...back, volume: tankVolume(heard)?.text }, context);
  }
  const goal =
    said.find(({ role }) => role === 'goal') ??
    (said.length === 2 && says(heard, ...MOVES) ? said[1] : undefined);
  const now = said.find((s) => s !== goal && s.role !== 'goal');
  if (goal === undefined || now === undefined) return undefined;
  const input = { now: now.mention.text, goal: goal.mention.text, volume: tankVolume(heard)?.text };
  return call(adjustCommand, input, context);
};

/** Asked to be put right, with no goal said. */
const MENDS = [
  'fix',
  'rais(?:e|ing)',
  'lower(?:ing)?',
  'how',
  'help',
  'correct',
  'bring',
  'what (?:do|should|can|now)',
];

/** A single salinity and a question mark: every scale. */
export const salinityIntent: Intent = (heard, context) => {
  const [only] = saidOf(heard, 'salinity');
  if (only === undefined || heard.said.length > 1) return undefined;
  if (only.role === 'goal')
    return call(adjustCommand, { goal: only.mention.text, volume: tankVolume(heard)?.text }, context);
  if (says(heard, ...MENDS) && remarkIn(heard) !== undefined)
    return call(adjustCommand, { now: only.mention.text, volume: tankVolume(heard)?.text }, context);
  return call(convertSalinityCommand, { reading: only.mention.text }, context);
};
