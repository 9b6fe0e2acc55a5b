import type { Heard } from '../../core/words/hear.ts';
import { is, type Mention } from '../../core/words/mention.ts';
import { leadOf } from '../../core/words/roles.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';

/** "refractometer 1.026, the 35 ppt fluid reads 1.028": what the tank really is. */
export const instrumentIntent: Intent = (heard, context) => {
  if (!says(heard, 'cal(?:ibration)? ?(?:fluid|solution)?', 'calibrat\\w+', 'standard', 'fluid'))
    return undefined;
  const standard = reading(
    heard,
    /\b(?:fluid|standard|solution|it)\b[^.!?]{0,30}\b(?:reads?|shows?|says|is)\b/,
  );
  const tank = reading(heard, /\b(?:refract\w*|refractometer|tank|tank water|probe|meter)\b/, standard);
  if (standard === undefined || tank === undefined) return undefined;
  return call('salinity check', { reading: tank.text, standard: standard.text }, context);
};

/** The salinity written in a gravity whose lead names an instrument or the standard. */
function reading(heard: Heard, lead: RegExp, not?: Mention): Mention | undefined {
  return heard.mentions.find(
    (m, index) =>
      m !== not && is(m, 'salinity') && m.value < 2 && lead.test(leadOf(heard.text, heard.mentions, index)),
  );
}

/** "probe shows 45 mS, is that 35 ppt?" */
export const conductivityIntent: Intent = (heard, context) => {
  const measured = heard.mentions.find((m) => is(m, 'conductivity'));
  if (measured === undefined) return undefined;
  const temperature = heard.mentions.find((m) => is(m, 'temperature'))?.text;
  return call('salinity check', { reading: measured.text, temperature }, context);
};

/** "15 cups of mix in a 30 gal bin for 35 ppt": salt for a batch. */
export const mixIntent: Intent = (heard, context) => {
  const salt = says(heard, 'salt', 'mix', 'mixing', 'cups?');
  const asks = says(heard, 'how much salt', 'cups?', 'grams', 'kg', 'lbs?', 'new batch');
  const volume = tankVolume(heard);
  if (volume === undefined || !salt || !asks) return undefined;
  const goal = heard.said.find(({ parameter }) => parameter === 'salinity');
  const amount = heard.mentions.find(
    (m) => /cups?$/.test(m.text) || (is(m, 'mass') && !is(m, 'volume')),
  )?.text;
  return call('salinity mix', { volume: volume.text, goal: goal?.mention.text, amount }, context);
};

/** "1.030, 55 gal, want 1.026": one swap and a day plan. */
export const adjustIntent: Intent = (heard, context) => {
  const said = heard.said.filter(({ parameter }) => parameter === 'salinity');
  const goal = said.find(({ role }) => role === 'goal') ?? (said.length === 2 ? said[1] : undefined);
  const now = said.find((s) => s !== goal && s.role !== 'goal');
  if (goal === undefined || now === undefined) return undefined;
  const input = { now: now.mention.text, goal: goal.mention.text, volume: tankVolume(heard)?.text };
  return call('salinity adjust', input, context);
};

/** A single salinity and a question mark: every scale. */
export const salinityIntent: Intent = (heard, context) => {
  const [only, more] = heard.said;
  if (only?.parameter !== 'salinity' || more !== undefined) return undefined;
  return call('salinity convert', { reading: only.mention.text }, context);
};
