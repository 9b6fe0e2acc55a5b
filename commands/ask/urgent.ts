import type { UrgentId } from '../../core/care/urgent/cards.ts';
import { urgentIn } from '../../core/care/urgent/find.ts';
import { levelCard } from '../../core/care/urgent/level-card.ts';
import { sideBeyond } from '../../core/care/urgent/side.ts';
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
export const firstAidIntent: Intent = (heard, context) => cardFor(urgentOf(heard), heard, context);

/** The card for a level that no scale here goes to, where nothing else could be made of it. */
export const beyondIntent: Intent = (heard, context) => {
  const cards = LEVELS.map((id) => {
    const text = levelNow(heard, id);
    const side = text === undefined ? undefined : sideBeyond(id, text);
    return side === undefined ? undefined : levelCard(id, side);
  });
  return cardFor(
    cards.find((card) => card !== undefined),
    heard,
    context,
  );
};

/** In the order to act in. */
const LEVELS = ['ammonia', 'salinity', 'temperature', 'alkalinity', 'ph'] as const;

function cardFor(what: UrgentId | undefined, heard: Heard, context: Parameters<Intent>[1]) {
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
}

/** Animals that gasp do so of something: a cause that was measured has the better card. */
function urgentOf(heard: Heard): UrgentId | undefined {
  const named = urgentIn(heard.text);
  if (named !== undefined && named !== 'oxygen loss') return named;
  const measured = alarmIn(heard);
  const isOther = measured === 'salinity crash' || measured === 'cold water';
  return named !== undefined && isOther ? named : (measured ?? named);
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
