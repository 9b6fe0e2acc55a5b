import { compoundsFor } from '../../core/dosing/compound.ts';
import { dailyCommand } from '../dose/daily.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { call } from './call.ts';
import { compoundFor } from './dosing.ts';
import type { Intent } from './intent.ts';

/** "the tank uses 1.2 dkh a day, how much soda ash daily": what replaces a use that is known. */
export const dailyIntent: Intent = (heard, context) => {
  const use = heard.said.find(({ role, everyDays }) => role === 'use' && everyDays !== undefined);
  if (use === undefined || compoundsFor(use.parameter).length === 0 || use.everyDays === undefined)
    return undefined;
  if (heard.said.some(({ role }) => role === 'goal') || use.mention.value <= 0) return undefined;
  const of = use.parameter;
  const input = { of, use: `${use.mention.text} per ${use.everyDays} days`, with: compoundFor(heard, of) };
  return call(dailyCommand, { ...input, volume: tankVolume(heard)?.text }, context);
};
