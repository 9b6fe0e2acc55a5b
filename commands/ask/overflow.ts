import { saidOf } from '../../core/words/hear.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { readSalinity } from '../../core/water/salinity-reading.ts';
import { excessCommand } from '../salinity/excess.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';

/** Fresh water that ran in on top (stuck top-off, clogged overflow): leave it, let it evaporate. */
export const overflowIntent: Intent = (heard, context) => {
  const ranIn =
    says(heard, 'overflow', 'top ?off', 'auto ?top', 'ato', 'float switch') &&
    says(heard, 'kept', 'adding', 'added', 'stuck', 'clogged', 'overfilled', 'ran');
  const [first, second] = saidOf(heard, 'salinity').map(({ mention }) => mention.text);
  if (!ranIn || first === undefined || second === undefined) return undefined;
  const [a, b] = [first, second].map((text) => readSalinity(text, { field: 'salinity' }).practicalSalinity);
  const [now, usual] = (a ?? 0) < (b ?? 0) ? [first, second] : [second, first];
  return call(excessCommand, { now, usual, volume: tankVolume(heard)?.text }, context);
};
