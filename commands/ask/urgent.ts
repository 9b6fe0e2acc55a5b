import type { UrgentId } from '../../core/care/urgent/cards.ts';
import { urgentIn } from '../../core/care/urgent/find.ts';
import { saidOf, type Heard } from '../../core/words/hear.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { answerOf } from '../defaults.ts';
import { urgentCommand } from '../urgent.ts';
import { typed } from './call.ts';
import { alarmIn, levelNow, levelSaid, overdosed } from './care/alarm.ts';
import type { Intent } from './intent.ts';

/** Something is going wrong now: the card, unless two salinities have a sum of their own (fresh water that ran in). */
export const urgentIntent: Intent = (heard, context) =>
  isCompared(heard) && urgentOf(heard) === 'salinity crash' ? undefined : firstAidIntent(heard, context);

/** The card in any case, with the volume and the reading that were said. */
export const firstAidIntent: Intent = (heard, context) => {
  const what = urgentOf(heard);
  if (what === undefined) return undefined;
  const of = what === 'overdose' ? overdosed(heard) : undefined;
  const salinity = levelNow(heard, 'salinity');
  const said = {
    what,
    of,
    now: levelSaid(heard, what, of),
    volume: tankVolume(heard)?.text,
    temperature: levelNow(heard, 'temperature'),
    salinity: salinity === undefined ? undefined : onScale(salinity),
  };
  const given = answerOf(urgentCommand, said, context);
  return { ...given, read: [`your question as ${typed(urgentCommand, said)}`, ...given.read] };
};

function urgentOf(heard: Heard): UrgentId | undefined {
  return urgentIn(heard.text) ?? alarmIn(heard);
}

/** A bare number that can only be ppt; a scale is not asked for while a tank is in danger. */
function onScale(text: string): string {
  const isPpt = /^\d{2}(?:[.,]\d+)?$/.test(text) && Number.parseFloat(text) <= 42;
  return isPpt ? `${text} ppt` : text;
}

/** "1.024 instead of 1.025": fresh water that ran in has a sum of its own. */
function isCompared(heard: Heard): boolean {
  return saidOf(heard, 'salinity').length > 1;
}
