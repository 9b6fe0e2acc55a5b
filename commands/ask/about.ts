import { noCase, type Case, type Moment } from '../../core/language/case.ts';
import type { Frame } from '../../core/language/frame.ts';
import { filledFrom, standing, type Standing } from '../../core/language/goes-on.ts';
import { met } from '../../core/language/met.ts';
import { isNewSubject, isSomebodyElses } from '../../core/language/new-subject.ts';
import { renamed } from '../../core/language/renamed.ts';
import type { OwnContext } from '../command.ts';
import type { Keep, Tank } from '../keep.ts';
import { usesOf } from './kinds.ts';

/** What a message is about: whose tank, and how it goes on from the case. */
export interface About {
  /** Nothing of a case that was left for a new subject. */
  readonly before: Case;
  readonly stand: Standing;
  /** What fills what the message leaves out: never from the member's tank into somebody else's. */
  readonly fills: Case;
  readonly isOthers: boolean;
  /** The kept tank it is about; none where nothing is kept, and for somebody else's. */
  readonly tank: Tank | undefined;
  /** What its answer is made with: the tank in use is there only where the message is about it. */
  readonly context: OwnContext;
  /** Says so where the case was left or the tank not used. */
  readonly read: readonly string[];
}

/** `wasOthers`: the message was about somebody else's tank when it was answered before. */
export function aboutOf(frame: Frame, given: Case, context: OwnContext, wasOthers = false): About {
  const told = renamed(given, frame.reading.scanned);
  const usual = context.keep?.tankInUse();
  const isElses = wasOthers || isSomebodyElses(frame);
  const isMine = met(frame.reading.scanned, 'manner.ownThing');
  const goesOn = isElses ? partOf(told, true) : isMine ? partOf(told, false) : told;
  const stand = standing(frame, goesOn, usesOf);
  if (isElses || isOfOthers(stand, goesOn)) {
    const isLeft = usual !== undefined || wouldFill(frame, told);
    return {
      before: told,
      stand,
      fills: noCase,
      isOthers: true,
      tank: undefined,
      context: withoutTank(context),
      read: isLeft ? ['taken as somebody else\u2019s tank: nothing of yours is used'] : [],
    };
  }
  const named = tankSaid(frame, context.keep);
  const isNew = isNewSubject(told, frame, { named: named?.name, usual: usual?.name });
  const before = isNew ? noCase : told;
  const tank = named ?? tankOf(before, context.keep) ?? usual;
  return {
    before,
    stand: isNew ? { kind: 'new' } : stand,
    fills: before,
    isOthers: false,
    tank,
    context: tank?.id === usual?.id ? context : withoutTank(context),
    read: isNew && wouldFill(frame, told) ? ['taken as a new subject'] : [],
  };
}

/** What was told of somebody else's tank, or of the member's own. */
function partOf({ moments, last, waits }: Case, theirs: boolean): Case {
  const isPart = ({ isOthers }: Moment): boolean => (isOthers === true) === theirs;
  const isOpen = waits !== undefined && moments.slice(-1).some(isPart);
  return { moments: moments.filter(isPart), last, ...(isOpen ? { waits } : {}) };
}

/** Whether a message goes on with somebody else's tank, though it does not say so again. */
function isOfOthers(stand: Standing, { moments }: Case): boolean {
  if (stand.kind === 'rest') return stand.isOthers;
  return stand.kind === 'next' && moments.at(-1)?.isOthers === true;
}

/** Whether the case would have filled something in, or taken the message for the rest of its question. */
function wouldFill(frame: Frame, told: Case): boolean {
  return (
    standing(frame, told, usesOf).kind !== 'new' ||
    filledFrom(frame, told, usesOf(frame.kind)).taken.length > 0
  );
}

function tankOf({ tank: name }: Case, keep: Keep | undefined): Tank | undefined {
  return name === undefined ? undefined : keep?.tanks().find((tank) => tank.name === name);
}

/** The member's tank whose name stands in a message, where there are several to tell apart. */
function tankSaid({ reading: { scanned } }: Frame, keep: Keep | undefined): Tank | undefined {
  const tanks = keep?.tanks() ?? [];
  if (tanks.length < 2) return undefined;
  const words = ` ${wordsOf(scanned.text)} `;
  return tanks
    .filter(({ name }) => words.includes(` ${wordsOf(name)} `))
    .toSorted((a, b) => b.name.length - a.name.length)[0];
}

function wordsOf(text: string): string {
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '')
    .join(' ');
}

/** The same without a tank in use: what is kept of another is no answer here. */
function withoutTank(context: OwnContext): OwnContext {
  const { keep } = context;
  return keep === undefined ? context : { ...context, keep: { ...keep, tankInUse: () => undefined } };
}
