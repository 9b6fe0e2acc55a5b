import { isDangerKind } from '../../core/language/kind-groups.ts';
import { noCase, refusedWith, withMoment, withoutLast } from '../../core/language/case.ts';
import { framesOf, type Frame } from '../../core/language/frame.ts';
import { inStory } from '../../core/language/in-story.ts';
import type { Kind } from '../../core/language/kinds.ts';
import { readInCase } from '../../core/language/read-in-case.ts';
import type { Reader } from '../../core/language/reading.ts';
import { ofTankSpoken, perTank, withOtherTanks } from '../../core/language/tank-spoken.ts';
import { withChoices } from '../../core/language/unsure.ts';
import { withVolumeRight } from '../../core/language/volume-put-right.ts';
import { tongueOf } from '../../core/language/tongue/tongue-of.ts';
import type { Answer, NextAction } from '../answer.ts';
import type { OwnContext } from '../command.ts';
import { primer } from '../../core/care/primers/cards.ts';
import { cardAnswer } from '../primer/card-answer.ts';
import { primerNamed } from '../primer/named.ts';
import { unreadable } from '../help/talk.ts';
import { despairAnswer } from '../urgent/despair.ts';
import { hurtAnswer } from '../urgent/hurt.ts';
import { mayBeHurt } from '../urgent/of-reading.ts';
import { watchedKeep } from '../watched-keep.ts';
import { aboutOf, type About } from './about.ts';
import { answered, answeredOnce, keptOf, type Given } from './answered.ts';
import { besidesSize } from './besides-size.ts';
import { byLevel } from './by-level.ts';
import { ofClaim } from './of-claim.ts';
import { ofMedicine } from './of-medicine.ts';
import { decide, type Decision } from './decide.ts';
import { foreignAnswer } from './foreign.ts';
import { fromCase, KEPT, nextOf, notedOf, restOf } from './in-case.ts';
import { withKeepOffers } from './keep-offers.ts';
import { withUrgent } from './kept-urgent.ts';
import { momentKept } from './moment-kept.ts';
import { noPage } from './no-page.ts';
import { perhapsOf } from '../primer/particular.ts';
import { personOrTankOf } from './person-or-tank.ts';
import { shortLimits } from '../short/limits.ts';
import { asKind, farFromAll, notThat, offered, offers, takesAnew } from './offer.ts';

/** How a message is to be taken where a button says so. */
export interface Taken {
  /** As this kind. */
  readonly as?: Kind;
  /** As none of these. */
  readonly not?: readonly Kind[];
  /** It is the last message of the case, once more. */
  readonly isAnew?: boolean;
  /** The parts some of its numbers play (core/language/unsure.ts). */
  readonly parts?: string;
}

/**
 * Answers a message in plain words: reads it, decides what it is, calls the command. What the case and the kept tank know
 * fills what it leaves out; what it says is added to the case. Once an answer has written something, the text is gone from
 * the case, so that no button does it twice.
 *
 * @throws Problem for what the member can put right.
 */
export function answerMessage(text: string, taken: Taken, reader: Reader, context: OwnContext): Answer {
  const { tongue } = tongueOf(text);
  if (tongue !== 'english' && taken.as === undefined) return foreignAnswer(text, tongue);
  const unread = taken.as === undefined ? unreadable(text) : undefined;
  if (unread !== undefined) return unread;
  const all = context.talk?.before ?? noCase;
  const plain = reader.read(text);
  const told = ofTankSpoken(all, plain.scanned);
  const isAnew = taken.isAnew === true;
  const earlier = isAnew ? withoutLast(told) : told;
  const inCase = readInCase(plain, earlier);
  const reading = taken.parts === undefined ? inCase : withChoices(inCase, taken.parts);
  const sad = despairAnswer(reading.scanned);
  if (sad !== undefined) return sad;
  const refused = refusedWith(isAnew ? told : noCase, taken.not ?? []);
  const alone = framesOf(reading).map((frame) => withVolumeRight(frame, told));
  const come = earlier.moments.map(({ kind }) => kind);
  const frames = come.length > 0 ? inStory(alone, come, reader.story) : alone;
  const left = besidesSize(
    frames.filter(({ kind }) => !refused.includes(kind)),
    reader.thresholds,
  );
  const [likeliest] = taken.as === undefined ? left : frames.filter(({ kind }) => kind === taken.as);
  if (likeliest === undefined) return farFromAll(frames);
  let hasWritten = false;
  const watched = watchedFor(context, () => (hasWritten = true));
  const wasOthers = isAnew && told.moments.at(-1)?.isOthers === true;
  const about = aboutOf(likeliest, earlier, watched, wasOthers);
  let given: Given | undefined;
  try {
    given =
      taken.as === undefined
        ? givenFor(left, refused.length > 0, about, reader)
        : outright(likeliest, frames, about);
    return finished(given, about, hasWritten);
  } finally {
    const kind = taken.as !== undefined && given !== undefined ? taken.as : keptKind(given);
    const meant = taken.as === undefined ? left : [likeliest];
    const { isOthers } = about;
    const moment = momentKept(given?.frame ?? likeliest, kind, { meant, atMs: context.nowMs, isOthers });
    const isDone = hasWritten && given !== undefined;
    const waits = given?.waits ?? (kind === 'told' ? told.waits : undefined);
    const tank = tankName(about, context);
    const before = withOtherTanks(about.before, all);
    const moments = perTank(moment, reading, all);
    context.talk?.remember(withMoment(before, moments, isDone ? '' : text, { waits, refused, tank }));
  }
}

/** The tank a case is about, where it is not the one in use. */
function tankName({ isOthers, before, tank }: About, { keep }: OwnContext): string | undefined {
  if (isOthers) return before.tank;
  return tank?.id === keep?.tankInUse()?.id ? undefined : tank?.name;
}

function watchedFor(context: OwnContext, onWrite: () => void): OwnContext {
  return context.keep === undefined ? context : { ...context, keep: watchedKeep(context.keep, onWrite) };
}

function givenFor(frames: readonly Frame[], isRefused: boolean, about: About, { thresholds }: Reader): Given {
  const decision =
    (isRefused ? undefined : (byLevel(frames, thresholds) ?? ofMedicine(frames) ?? ofClaim(frames))) ??
    decide(frames, thresholds);
  const first = decision.kind === 'answer' ? decision.frame : frames[0];
  if (first === undefined) return far(frames);
  const run = answeredOnce(about);
  const isDanger = decision.kind === 'answer' && isDangerKind(first.kind);
  const stand = isDanger || isRefused ? ({ kind: 'new' } as const) : about.stand;
  const done =
    (stand.kind === 'next' ? nextOf(first, about) : undefined) ??
    restOf(first, stand, about) ??
    (isDanger ? undefined : notedOf(decision, frames, about)) ??
    (isDanger || isRefused ? undefined : fromCase(decision, frames, about, run));
  return done ?? fromDecision(decision, frames, run);
}

function keptKind(given: Given | undefined): Kind {
  const { frame, waits } = given ?? {};
  return frame !== undefined && (waits !== undefined || frame.probability >= KEPT) ? frame.kind : 'next-step';
}

function fromDecision(
  decision: Decision,
  frames: readonly Frame[],
  run: (frame: Frame) => Given | undefined,
): Given {
  const card = primerOf(decision, frames);
  if (card !== undefined) return card;
  if (decision.kind === 'far') return far(frames);
  if (decision.kind === 'offer') return offering(decision.frames);
  const done = personOrTankOf(decision) ?? run(decision.frame);
  if (done === undefined) {
    const known = named(decision.frame);
    if (known !== undefined) return known;
    const others = frames.filter((frame) => frame !== decision.frame).slice(0, 3);
    // A card of another kind may be what is asked; it comes before the kinds.
    const cards = others.slice(0, 1).flatMap((frame) => perhapsOf(frame).slice(0, 2));
    const next = [...cards, ...offers(others).next];
    return { answer: { ...noPage(), next }, frame: decision.frame, taken: [decision.frame.kind] };
  }
  const more = decision.others.flatMap(({ kind }) => asKind(kind) ?? []);
  return { ...done, answer: { ...done.answer, next: [...done.answer.next, ...more] } };
}

/** Surer than this of a kind, a short "what is" is no question for a card. Own choice. */
const SURE = 0.9;

/** A short question what something is has its card, where nothing else is surer. */
function primerOf(decision: Decision, [first]: readonly Frame[]): Given | undefined {
  const isSure = decision.kind === 'answer' && decision.frame.probability >= SURE;
  return first === undefined || isSure || isDangerKind(first.kind) ? undefined : named(first);
}

/** The short card of what a question asks the meaning of. */
function named(frame: Frame): Given | undefined {
  const id = primerNamed(frame.reading.scanned);
  return id === undefined ? undefined : { answer: cardAnswer(primer(id)), frame, taken: [frame.kind] };
}

/** The message taken as one kind, because a button said so. */
function outright(frame: Frame, frames: readonly Frame[], about: About): Given {
  return answered(frame, about) ?? { ...far(frames), frame };
}

function far(frames: readonly Frame[]): Given {
  const [first] = frames;
  const isBody = first !== undefined && mayBeHurt(first.reading);
  return { answer: isBody ? hurtAnswer(undefined) : farFromAll(frames), frame: undefined, taken: [] };
}

function offering(frames: readonly Frame[]): Given {
  return { answer: offers(frames), frame: undefined, taken: offered(frames) };
}

/** The answer with what is beside it: what the log holds that cannot wait, what can be kept, the way out. */
function finished({ answer: done, frame, taken, slots }: Given, about: About, hasWritten: boolean): Answer {
  const kept = keptOf(about);
  const isTalk = frame === undefined || frame.kind === 'greeting' || frame.kind === 'off-topic';
  const urgent = kept === undefined || isTalk ? done : withUrgent(done, slots ?? frame.slots, kept);
  const beside = kept === undefined || isTalk || hasWritten ? urgent : withKeepOffers(urgent, frame, kept);
  const next = taken.length === 0 ? beside.next : withNotThat(beside, notThat(taken));
  return {
    ...beside,
    read: [...about.read, ...beside.read],
    next: hasWritten ? next.filter((one) => !takesAnew(one)) : next,
  };
}

/** The way out is always in view: behind the last of all choices, else within the next steps that are shown. */
function withNotThat({ next, tone, isMenu = false }: Answer, way: NextAction): readonly NextAction[] {
  if (isMenu || tone === 'question') return [...next, way];
  const before = shortLimits.next - 1;
  return [...next.slice(0, before), way, ...next.slice(before)];
}
