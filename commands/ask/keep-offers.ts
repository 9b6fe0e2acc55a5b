import { classesMet, clauseOf } from '../../core/language/beside.ts';
import type { Frame } from '../../core/language/frame.ts';
import type { NameSpan } from '../../core/language/names.ts';
import { say } from '../../core/wording/say.ts';
import type { Answer, NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { tankInput } from '../coral/tank-input.ts';
import { keptCoral } from './kept-coral.ts';
import type { Kept } from './kept-slots.ts';

/** An answer with buttons that keep what a message tells of in passing: a coral that came, moved or is gone, a dose. */
export function withKeepOffers(given: Answer, frame: Frame, kept: Kept): Answer {
  const held = new Set(given.next.map(({ command }) => command));
  const offers = [...coralOffers(frame, kept), ...doseOffers(frame, kept)];
  return { ...given, next: [...given.next, ...offers.filter(({ command }) => !held.has(command))] };
}

/** Only what is told as done: no question, nothing denied. */
function coralOffers({ reading: { scanned } }: Frame, kept: Kept): readonly NextAction[] {
  const corals = scanned.names.filter((name) => name.class === 'coral');
  return corals.flatMap((name) => {
    const clause = clauseOf(scanned, name);
    const found = classesMet(clause);
    const isAsked = clause.at(-1)?.word === '?';
    if (isAsked || found.has('manner.negation') || found.has('manner.supposition')) return [];
    return coralOffer(name, found, kept) ?? [];
  });
}

function coralOffer({ id: coral }: NameSpan, found: ReadonlySet<string>, kept: Kept): NextAction | undefined {
  const own = keptCoral(coral, kept);
  const tank = tankInput(kept.keep, kept.tank);
  if (found.has('records.gone'))
    return (
      own && action(say('ask.takeOffList', { coral }), 'coral remove', { coral: String(own.id), ...tank })
    );
  if (found.has('records.moved'))
    return (
      own &&
      action(say('ask.sayWhereItStands', { coral }), 'coral move', { coral: String(own.id), ...tank }, ['at'])
    );
  if (found.has('records.came'))
    return action(say('ask.keepCoralIn', { coral, tank: kept.tank.name }), 'coral add', { coral, ...tank }, [
      'at',
      'size',
      'since',
      'origin',
    ]);
  return undefined;
}

/** What went in by accident counts in the use of the tank. */
function doseOffers({ kind, slots: { salt, amount } }: Frame, { tank }: Kept): readonly NextAction[] {
  if (kind !== 'overdose' || salt === undefined || amount === undefined) return [];
  return [action(say('ask.logWhatWentIn'), 'log dose', { with: salt, amount, tank: tank.name })];
}
