import { raisedBy } from '../../core/words/names.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { answerOf } from '../defaults.ts';
import { urgentCommand } from '../urgent.ts';
import { IT_IS_IN, withEffect } from '../urgent/overdose.ts';
import { overdosed } from './care/alarm.ts';
import { effect } from './effect.ts';
import { says, type Intent } from './intent.ts';

const ACCIDENT = [
  'by (?:accident|mistake)',
  'on accident',
  'accident(?:al)?l?y',
  'mistakenly',
  'o+ps',
  'whoops',
  'messed up',
  'screwed up',
] as const;
const PUT_IN = [
  'added',
  'adding',
  'dosed',
  'put',
  'poured',
  'dumped',
  'tipped',
  'spilled',
  'doubled',
  'went in',
] as const;

/** "I added 3 tablespoons of baking soda to 60 gal by accident": it is in, so first aid, and what it did. */
export const accidentIntent: Intent = (heard, context) => {
  if (!says(heard, ...ACCIDENT) || !says(heard, ...PUT_IN)) return undefined;
  const raised = new Set(heard.compounds.flatMap(({ name }) => raisedBy(name)));
  const done = effect(heard, context);
  if (!raised.has('alkalinity') && !raised.has('calcium')) return done && { ...done, steps: IT_IS_IN };
  const volume = tankVolume(heard)?.text;
  const card = answerOf(urgentCommand, { what: 'overdose', of: overdosed(heard), volume }, context);
  return done === undefined ? card : withEffect(card, done);
};
