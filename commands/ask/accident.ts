import { raisedBy } from '../../core/words/names.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { diluteCommand } from '../water/dilute.ts';
import { call } from './call.ts';
import { overdosed } from './care/alarm.ts';
import { powderIn } from './effect.ts';
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
  const what = heard.compounds[0]?.name;
  const amount = powderIn(heard)?.text;
  const volume = tankVolume(heard)?.text;
  if (raised.has('alkalinity') || raised.has('calcium'))
    return call(diluteCommand, { what, amount, volume, of: overdosed(heard) }, context);
  return what === undefined || amount === undefined
    ? undefined
    : call(diluteCommand, { what, amount, volume }, context);
};
