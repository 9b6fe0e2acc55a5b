import { z } from 'zod';
import { kinds, type Kind } from './kinds.ts';
import { slotsSchema, withoutUndefined, type Level, type Slots } from './slots.ts';

/** One message of a case: when it came, what it was taken for and what it said. Its words are not kept. */
const momentSchema = z.strictObject({
  atMs: z.number(),
  kind: z.enum(kinds),
  slots: slotsSchema,
  /** What else it may have been, with its kind, likeliest first. */
  likely: z.array(z.strictObject({ kind: z.enum(kinds), probability: z.number() })).optional(),
  /** Cards below those kinds, each with the probability that it is of that kind and that card. */
  cards: z
    .array(z.strictObject({ kind: z.enum(kinds), name: z.string(), probability: z.number() }))
    .optional(),
  /** It is about somebody else's tank: nothing of it is known of the member's own. */
  isOthers: z.literal(true).optional(),
  /** It tells that a pet that was hurt is well. */
  isWell: z.literal(true).optional(),
  /** Which of several tanks of the member it is about, by the word for it; of all of them where left out. */
  about: z.string().optional(),
});

/**
 * What one person told in one place, and is going through: the messages of the last hours by what they said. `last` is the
 * text of the latest alone, so that "Not that" has something to go back to: it is empty once that text has been acted on.
 * `waits` is the kind whose one question is open, `refused` the kinds the latest message is not, `tank` the name of the
 * kept tank spoken of where it is not the one in use.
 */
export const caseSchema = z.strictObject({
  moments: z.array(momentSchema),
  last: z.string(),
  waits: z.enum(kinds).optional(),
  refused: z.array(z.enum(kinds)).optional(),
  tank: z.string().optional(),
});

export type Case = z.infer<typeof caseSchema>;
export type Moment = z.infer<typeof momentSchema>;

/** Messages kept of one case. Own choice. */
const MOST_MOMENTS = 24;

export const noCase: Case = { moments: [], last: '' };

/** What stands beside the messages of a case. */
type Beside = Pick<Case, 'waits' | 'refused' | 'tank'>;

/** The case with one more message, which may be about several tanks. */
export function withMoment(
  before: Case,
  moment: Moment | readonly Moment[],
  text: string,
  beside: Beside = {},
): Case {
  const { waits, refused = [], tank } = beside;
  return {
    moments: [...before.moments, moment].flat().slice(-MOST_MOMENTS),
    last: text,
    ...(waits === undefined ? {} : { waits }),
    ...(refused.length === 0 ? {} : { refused }),
    ...(tank === undefined ? {} : { tank }),
  };
}

/** The case as it was before its latest message, which is taken anew. */
export function withoutLast(before: Case): Case {
  const { moments, tank } = before;
  return { moments: moments.slice(0, -1), last: '', ...(tank === undefined ? {} : { tank }) };
}

/** The kinds its latest message was said not to be, with these. */
export function refusedWith({ refused = [] }: Case, more: readonly Kind[]): Kind[] {
  return [...new Set([...refused, ...more])];
}

/**
 * All that is known of the member's own tank now: of everything said several times, the last. Corals are those spoken of
 * last first. What was said of somebody else's is no part of it.
 */
export function known({ moments: all }: Case): Slots {
  const moments = all.filter(({ isOthers }) => isOthers !== true);
  const levels = latestLevels(asHistory(moments));
  const last: Slots = Object.assign({}, ...moments.map(withoutAge));
  const corals = [...new Set(moments.toReversed().flatMap(({ slots }) => slots.corals ?? []))];
  const salts = [...new Set(moments.toReversed().flatMap(({ slots }) => slots.salts ?? []))];
  return {
    ...last,
    ...(levels.length === 0 ? {} : { levels }),
    ...(corals.length === 0 ? {} : { corals }),
    ...(salts.length === 0 ? {} : { salts }),
  };
}

/**
 * The levels of a case in order, each with its day; of two readings of now told with two days the earlier was. One told
 * anew without a day is of the day it stands for.
 */
function asHistory(moments: readonly Moment[]): readonly Level[] {
  const all: Level[] = [];
  for (const { slots } of moments)
    for (const level of slots.levels ?? []) {
      const [only, more] = slots.moments ?? [];
      const own = level.moment ?? (more === undefined ? only : undefined);
      const at = all.findLastIndex(({ of, part }) => of === level.of && part === 'now');
      const before = level.part === 'now' ? all[at] : undefined;
      const day = own ?? before?.moment;
      if (before?.moment !== undefined && day !== before.moment) all[at] = { ...before, part: 'was' };
      all.push(day === undefined ? level : { ...level, moment: day });
    }
  return all;
}

const AGE = /month|year|yr/;

/** What a message said, without the age of tank or keeper: no time between readings, and none to be away. */
function withoutAge({ slots }: Moment): Slots {
  const { span, spans: _spans, ...rest } = slots;
  return span !== undefined && AGE.test(span) ? rest : slots;
}

/** The levels of one parameter in their slots: of several in one part the last. */
export function slotsOf(levels: readonly Level[], of: Slots['of']): Slots {
  const mine = levels.filter((level) => level.of === of);
  const last = (...parts: readonly Level['part'][]): Level | undefined =>
    mine.findLast(({ part }) => parts.includes(part));
  const rate = last('rate');
  return withoutUndefined({
    now: last('now')?.text,
    was: last('was')?.text,
    wanted: last('wanted', 'target')?.text,
    change: last('change')?.text,
    rate: rate?.text,
    rateDays: rate?.everyDays,
    other: last('other')?.text,
    limit: last('limit')?.text,
  });
}

/** The parameter that is asked about in a case: where something was wanted last, else what was read or dosed last. */
export function ofAsked({ moments }: Case): Slots['of'] {
  const levels = moments.flatMap(({ slots }) => slots.levels ?? []);
  const wanted = levels.findLast(({ part }) => part === 'wanted' || part === 'change' || part === 'target');
  const told = moments.filter(({ slots }) => slots.of !== undefined);
  const plain = told.findLast(({ slots }) => slots.levels !== undefined || slots.salt !== undefined);
  return wanted?.of ?? (plain ?? told.at(-1))?.slots.of;
}

/** Of every parameter the last level in each part. */
function latestLevels(levels: readonly Level[]): Level[] {
  const latest = new Map(levels.map((level) => [`${level.of} ${level.part}`, level]));
  return levels.filter((level) => latest.get(`${level.of} ${level.part}`) === level);
}

/** What a later message says, put over what an earlier one said; another parameter takes the levels over. */
export function over(before: Slots, later: Slots): Slots {
  const isOtherName = later.of !== undefined && later.levels === undefined && before.of !== later.of;
  const levels =
    isOtherName && later.of !== undefined
      ? renamedTo(later.of, before.levels, before.of)
      : latestLevels([...(before.levels ?? []), ...(later.levels ?? [])]);
  return { ...before, ...later, ...(levels.length === 0 ? {} : { levels }) };
}

/** Levels with those of one parameter as if they had been said of another. */
export function renamedTo(of: Level['of'], levels: readonly Level[] = [], from: Slots['of']): Level[] {
  return levels.map((level) => (level.of === from ? { ...level, of } : level));
}
