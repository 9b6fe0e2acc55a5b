import { saidOf } from '../../core/words/hear.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { batchCommand } from '../salinity/batch.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';

const BATCH = [
  'bin',
  'bucket',
  'trash ?can',
  'barrel',
  'tubs?',
  'drum',
  'batch',
  'new salt ?(?:water|mix)?',
  'mix(?:ed|ing)? (?:at|to|reads?)',
  'freshly mixed',
  'container',
  'jug',
];

/** "new mix reads 1.023 in a 32 gal bin, want 1.026": no animals in it, so in one go; salt or fresh water to add. */
export const batchIntent: Intent = (heard, context) => {
  const said = saidOf(heard, 'salinity');
  const goal = said.find(({ role }) => role === 'goal') ?? said[1];
  const now = said.find((one) => one !== goal);
  const volume = tankVolume(heard)?.text;
  if (goal === undefined || now === undefined || volume === undefined || said.length > 2) return undefined;
  if (!says(heard, ...BATCH)) return undefined;
  if (says(heard, 'tank', 'corals?', 'fish', 'display', 'reef', 'system')) return undefined;
  return call(batchCommand, { volume, now: now.mention.text, goal: goal.mention.text }, context);
};
