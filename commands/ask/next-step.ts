import { known, slotsOf, type Case, type Moment } from '../../core/language/case.ts';
import { placeIn } from '../../core/care/meant-cards.ts';
import { levelCard } from '../../core/care/urgent/level-card.ts';
import { dangerSide } from '../../core/language/danger.ts';
import { cardsTold, dangerTold, likelyAs } from '../../core/language/evidence.ts';
import type { Frame } from '../../core/language/frame.ts';
import { ACTING, wordsBesides } from '../../core/language/goes-on.ts';
import { asksNothing, type Kind } from '../../core/language/kinds.ts';
import { retold, toldSlots } from '../../core/language/retold.ts';
import type { Slots } from '../../core/language/slots.ts';
import { dangerKinds, isDangerKind, isSum, type DangerKind } from '../../core/language/kind-groups.ts';
import type { ParameterId } from '../../core/water/parameter.ts';
import type { Answer } from '../answer.ts';
import type { OwnContext } from '../command.ts';
import { hurtAnswer } from '../urgent/hurt.ts';
import { byDanger } from '../urgent/of-reading.ts';
import { hurtTold } from './house-cards.ts';
import { rowOf } from './kinds.ts';
import { particularOf } from '../primer/particular.ts';
import { missingIn } from './row.ts';
import { attempt } from './rows/attempt.ts';
import { FEW_WORDS, PRESSING, wantedOf } from './wanted-of.ts';

/** So sure must a danger of earlier messages be to come before everything; own choice. */
const SURE_DANGER = 0.6;
/** From this probability a kind is a main reading of a message. Own choice. */
const MAIN = 0.5;
/** Words of a question that leans on what presses, where the message is sure of nothing else. Own choices. */
const MORE_WORDS = 20;
const UNSURE = 0.75;
/** Emergencies that are over once the number is back. */
const BY_LEVEL: Readonly<Record<string, ParameterId>> = {
  overheating: 'temperature',
  'cold water': 'temperature',
  'salinity crash': 'salinity',
  ammonia: 'ammonia',
};
/** What else presses is named, this many at most. */
const MOST_THEN = 2;

/**
 * "what do I do first", "is that ok", "how much then": answered from what the case holds. A person and a tank in danger
 * come first; then what the message itself and the whole case speak of most plainly. What presses next is named behind it.
 */
export function nextStep(frame: Frame, before: Case, context: OwnContext): Answer | undefined {
  const said = before.moments.filter(({ kind }) => !ACTING.has(kind));
  const dangers = dangerKinds
    .filter((kind) => isPressing(said, kind))
    .flatMap((kind) => cardsPressing(said, kind, before).map((card) => ({ kind, card, presses: true })));
  const wanted = wantedOf(frame, said, before)
    .filter((kind) => !isDangerKind(kind))
    .map((kind) => ({ kind, card: undefined, presses: PRESSING.has(kind) }));
  const given = [...dangers, ...wanted].flatMap(({ kind, card, presses }) => {
    const hurt = kind === 'person-hurt' ? hurtTold(said) : undefined;
    const done =
      hurt === undefined ? answerAs(framed(kind, frame, said, before, card), context) : hurtAnswer(hurt);
    return done === undefined ? [] : [{ done, presses }];
  });
  const isLast = ({ done, presses }: (typeof given)[number]): boolean => !presses && asks(done);
  const [first, ...others] = [...given.filter((one) => !isLast(one)), ...given.filter(isLast)];
  if (first === undefined) return undefined;
  const then = [...new Set(others.filter(({ presses }) => presses).map(({ done }) => done.headline))]
    .filter((headline) => headline !== first.done.headline)
    .slice(0, MOST_THEN)
    .map((headline) => `Then: ${headline}`);
  return {
    ...first.done,
    read: ['from what you told so far', ...first.done.read],
    steps: [...first.done.steps, ...then],
  };
}

/** The answer of the kind where nothing is wanting for it, else the card on the particular question that was told of. */
function answerAs(asked: Frame, context: OwnContext): Answer | undefined {
  const row = rowOf(asked.kind);
  const isWhole = row !== undefined && missingIn(row, asked) === undefined;
  const summed = isWhole ? attempt(() => row.answer(asked, context)) : undefined;
  if (summed !== undefined && !asks(summed)) return summed;
  return (isDangerKind(asked.kind) ? undefined : particularOf(asked)) ?? summed;
}

/** Whether an answer only asks back: another that the case allows comes first. */
function asks({ facts, steps, dangers, cautions, tone }: Answer): boolean {
  const told = facts.length + steps.length + cautions.length;
  return told + (tone === 'question' ? 0 : dangers.length) === 0;
}

/** What was told, as that kind. */
function framed(kind: Kind, frame: Frame, said: readonly Moment[], before: Case, card?: string): Frame {
  const isTheirs = before.moments.at(-1)?.isOthers === true || !isSum(kind);
  const moment = said.findLast((one) => one.kind === kind && (isTheirs || one.isOthers !== true));
  const own = moment?.slots ?? {};
  const slots = moment?.isOthers === true ? { ...own, ...frame.slots } : toldSlots(before, own, frame.slots);
  return retold(frame, kind, kind === 'readings-ok' ? readNow(slots) : withReady(kind, slots), said, card);
}

/** New water that stands ready in its vessel is what a change can take, where no other was told. */
function withReady(kind: Kind, slots: Slots): Slots {
  const { container, share, changed, waterRate, ...rest } = slots;
  const isOpen = share === undefined && changed === undefined && waterRate === undefined;
  return kind === 'change-once' && isOpen && container !== undefined
    ? { ...rest, changed: container }
    : slots;
}

/** What the tank reads: what it read before, limits and other water are no part of it. */
function readNow(slots: Slots): Slots {
  const { levels = [] } = slots;
  const now = levels.filter(({ part }) => part === 'now');
  const before = levels.filter(({ part, of }) => part === 'was' && !now.some((level) => level.of === of));
  return now.length === 0 ? slots : { ...slots, levels: [...now, ...before] };
}

/** Emergencies of one kind that were told and are not over, the most pressing first; a level that is one by itself as well. */
function cardsPressing(
  said: readonly Moment[],
  kind: DangerKind,
  before: Case,
): readonly (string | undefined)[] {
  const told = cardsTold(said, kind).filter((card) => !isBack(card, before));
  if (kind === 'person-hurt') return told.length === 0 ? [undefined] : told.slice(0, 1);
  const measured = (known(before).levels ?? []).flatMap(({ of, part, text }) => {
    const side = part === 'now' ? dangerSide(of, text) : undefined;
    return side === undefined ? [] : (levelCard(of, side) ?? []);
  });
  const all = [...new Set([...told, ...measured])];
  return all.toSorted((a, b) => placeIn<string>(byDanger, a) - placeIn<string>(byDanger, b));
}

/** Whether a question without a number of its own leans on what presses in its case, or on the case because it is short. */
export function leansOn(frame: Frame, { moments }: Case): boolean {
  const { slots, reading, probability } = frame;
  const words = wordsBesides(reading.scanned);
  const isInDanger = dangerKinds.some((kind) => isPressing(moments, kind));
  if (isInDanger && frame.kind !== 'handling' && probability < UNSURE && words <= MORE_WORDS) return true;
  if (asksNothing.has(frame.kind) && frame.kind !== 'next-step') return false;
  const isBare = slots.levels === undefined && slots.amount === undefined;
  const presses = moments.some(({ kind }) => PRESSING.has(kind));
  return isBare && words <= FEW_WORDS && presses;
}

function isPressing(said: readonly Moment[], kind: DangerKind): boolean {
  const isOfPet = kind === 'person-hurt' && cardsTold(said, kind).every((card) => card === 'pet');
  const moments = isOfPet ? said.slice(said.findLastIndex(({ isWell }) => isWell === true) + 1) : said;
  return dangerTold(moments, kind) >= SURE_DANGER && moments.some((moment) => likelyAs(moment, kind) >= MAIN);
}

/** The number is back where it is no emergency. */
function isBack(card: string, before: Case): boolean {
  const of = BY_LEVEL[card];
  const now = of === undefined ? undefined : slotsOf(known(before).levels ?? [], of).now;
  return of !== undefined && now !== undefined && dangerSide(of, now) === undefined;
}
