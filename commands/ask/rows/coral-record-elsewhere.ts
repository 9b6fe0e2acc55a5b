import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import type { SentenceKey } from '../../../core/wording/language.ts';
import { say } from '../../../core/wording/say.ts';
import { answer, type Answer, type NextAction } from '../../answer.ts';
import { action } from '../../calls.ts';
import { sizeSaid, spotSaid } from './spot-in.ts';

/** What is told of a coral: it came, it was moved, it is gone. */
export type Deed = 'came' | 'moved' | 'gone';

/** Gone before moved before added: "sold the one i moved". */
export function deedOf({ reading: { scanned } }: Frame): Deed {
  if (
    met(
      scanned,
      'records.gone',
      'lives.dies',
      'looks.dead',
      'deeds.sells',
      'deeds.gives',
      'deeds.discards',
      'deeds.unlists',
    )
  )
    return 'gone';
  return met(scanned, 'records.moved', 'deeds.moves') ? 'moved' : 'came';
}

const DONE = {
  came: 'ask.pressToKeep',
  moved: 'ask.pressToMove',
  gone: 'ask.pressToTakeOff',
} as const satisfies Readonly<Record<Deed, SentenceKey>>;
const COMMAND = {
  came: 'coral add',
  moved: 'coral move',
  gone: 'coral remove',
} as const satisfies Readonly<Record<Deed, string>>;

/** Where nothing of the member's may be touched: what will be done, where, and the button that does it. */
export function recordedElsewhere(
  deed: Deed,
  coral: string | undefined,
  frame: Frame,
  others: readonly string[],
): Answer {
  if (coral === undefined)
    return answer({
      headline: say('ask.coralsInPrivate'),
      next: [
        action(say('coral.myCorals'), 'coral list', {}),
        action(say('ask.checkMyCorals'), 'coral check', {}),
        action(say('ask.mapOfMyCorals'), 'coral map', {}),
      ],
    });
  const isSome = deed === 'gone' && isPart(frame);
  const isAll = deed === 'gone' && !isSome;
  return answer({
    headline: say(isSome ? 'ask.allOrAPart' : DONE[deed], { coral }),
    tone: isSome ? 'question' : 'plain',
    read: oneAtATime(others),
    steps: [
      isSome ? say('ask.chooseOrPrivate') : say('ask.orUse', { command: `/${COMMAND[deed]}` }),
      ...(isAll ? [say('ask.onlyAPartGone')] : []),
    ],
    next: [
      ...(isSome ? [sizeNow(coral), placeNow(coral)] : []),
      doing(deed, coral, frame),
      ...(isAll ? [sizeNow(coral)] : []),
    ],
  });
}

/** One coral at a time: the others are named, so that none is thought to be done. */
export function oneAtATime(others: readonly string[]): readonly string[] {
  return others.length === 0 ? [] : [say('ask.oneCoralAtATime', { others: others.join(', ') })];
}

/** With what was said; the rest is asked for. */
function doing(deed: Deed, coral: string, frame: Frame): NextAction {
  if (deed === 'gone') return action(say('ask.takeOffList', { coral }), 'coral remove', { coral });
  const spot = spotSaid(frame);
  const at = spot.missing.length === 0 ? spot.text : undefined;
  if (deed === 'moved')
    return action(
      say('ask.sayWhereItStands', { coral }),
      'coral move',
      { coral, at },
      at === undefined ? ['at'] : [],
    );
  const size = sizeSaid(frame);
  const open = [
    ...(at === undefined ? (['at'] as const) : []),
    ...(size === undefined ? (['size'] as const) : []),
  ];
  return action(say('ask.keepCoral', { coral }), 'coral add', { coral, at, size }, open);
}

/** Some heads or a frag of it are gone, or one was kept: the rest stays. */
export function isPart({ slots, reading: { scanned } }: Frame): boolean {
  return slots.heads !== undefined || met(scanned, 'corals.frag', 'sums.half', 'records.kept');
}

function placeNow(coral: string): NextAction {
  return action(say('ask.sayWhereTheRestStands'), 'coral move', { coral }, ['at']);
}

function sizeNow(coral: string): NextAction {
  return action(say('ask.aPartIsLeft'), 'coral move', { coral }, ['size']);
}
