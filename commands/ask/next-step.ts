import { known, slotsOf, type Case, type Moment } from '../../core/language/case.ts';
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
import { particularOf } from './particular.ts';
import type { Row } from './row.ts';
import { attempt } from './rows/attempt.ts';
import { MAIN, wantedOf } from './wanted-of.ts';

/** So sure must a danger of earlier messages be to come before everything; own choice. */
const SURE_DANGER = 0.6;
/** Words a question has at most that leans on what was told. */
const FEW_WORDS = 9;
/** The same where something presses and the message is sure of nothing else. Own choices. */
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
/** Kinds that press on animals where no danger does. */
const PRESSING: ReadonlySet<Kind> = new Set<Kind>(['overdose', 'fish-ill', 'coral-symptom', 'algae-pest']);

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
  const given = [...dangers, ...wanted].flatMap((one) => {
    const hurt = one.kind === 'person-hurt' ? hurtTold(said) : undefined;
    const row = rowOf(one.kind);
    const asked = framed(one.kind, frame, said, before, one.card);
    const told = hurt === undefined ? undefined : hurtAnswer(hurt);
    const summed = told ?? (isWhole(row, asked) ? attempt(() => row?.answer(asked, context)) : undefined);
    const done = summed === undefined || asks(summed) ? (cardFor(asked) ?? summed) : summed;
    return done === undefined ? [] : [{ done, presses: one.presses }];
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

/** The card on the particular question that was told of. */
function cardFor(asked: Frame): Answer | undefined {
  return isDangerKind(asked.kind) ? undefined : particularOf(asked);
}

/** Whether an answer only asks back: another that the case allows comes first. */
function asks({ facts, steps, cautions }: Answer): boolean {
  return facts.length + steps.length + cautions.length === 0;
}

/** What was told, as that kind. */
function framed(kind: Kind, frame: Frame, said: readonly Moment[], before: Case, card?: string): Frame {
  const isTheirs = before.moments.at(-1)?.isOthers === true || !isSum(kind);
  const moment = said.findLast((one) => one.kind === kind && (isTheirs || one.isOthers !== true)) ?? {
    slots: {},
  };
  const isOthers = 'isOthers' in moment && moment.isOthers === true;
  const slots = isOthers ? { ...moment.slots, ...frame.slots } : toldSlots(before, moment.slots, frame.slots);
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

function isWhole(row: Row | undefined, frame: Frame): boolean {
  return (row?.needs ?? []).every(
    ({ oneOf, when }) => oneOf.some((name) => frame.slots[name] !== undefined) || when?.(frame) === false,
  );
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
  return all.toSorted((a, b) => placeOf(a) - placeOf(b));
}

/** Where an emergency stands in the order to act in; the same for those that are none of it. */
function placeOf(card: string): number {
  const at = byDanger.findIndex((id) => id === card);
  return at < 0 ? byDanger.length : at;
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
