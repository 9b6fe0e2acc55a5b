import { afterChanges, changesToGoal, fractionForGoal } from '../../core/change/exchange.ts';
import { printed } from '../../core/log/value.ts';
import { fixed, span } from '../../core/quantity/format.ts';
import { parameter } from '../../core/water/parameter.ts';
import { percent } from '../waterchange/pour.ts';
import { changesOf } from './changes.ts';
import { fact, type Numbers } from './facts.ts';
import type { Known } from './input.ts';

/** Where a level is brought to when nothing is said, own choice within the usual range: dKH, mg/L. */
const AIM = { alkalinity: 9, calcium: 430, magnesium: 1350 } as const;
/** Alkalinity a tank of corals uses up in a day, dKH: common practice, no source; very uneven. */
const USED_A_DAY = [0.5, 1] as const;
/** Calcium used with 1 dKH of alkalinity, mg/L: 20.04 mg/L per meq/L over 2.804 dKH per meq/L. */
const CA_PER_DKH = 20.04 / 2.804;
/** One change that hurts nobody, and one that is already a swing of its own; common practice. */
const CHANGE = 0.25;
const LARGEST = 0.5;

/** What one and two changes of a quarter do to a level that is too high, and how long the tank takes by itself. */
export function overdoseNumbers(known: Known, id: keyof typeof AIM): Numbers {
  const { now, goal, fresh, water, missing } = known;
  const { part, read } = water;
  if (now === undefined) return { ...changesOf(known, [CHANGE]), missing: ['now', ...missing] };
  const aim = goal?.value ?? AIM[id];
  const freshLevel = fresh?.value ?? aim;
  const label = parameter(id).label;
  const show = (level: number): string => printed(id, level);
  const told = [
    ...read,
    `${label} ${show(now.value)}, ${goal === undefined ? 'back to about' : 'back to'} ${show(aim)}, new salt water ${show(freshLevel)}${fresh === undefined ? ' (taken; test it first)' : ''}`,
    ...now.notes,
  ];
  if (now.value <= aim) {
    const facts = [
      fact(
        label,
        `${show(now.value)} is not above ${show(aim)}: nothing to bring down, if the unit is right. Test again`,
      ),
    ];
    return { read: told, facts, working: [], sources: [], missing };
  }
  const after = (changes: number): string =>
    show(afterChanges({ now: now.value, fresh: freshLevel, fraction: CHANGE }, changes));
  const whole = fractionForGoal({ now: now.value, goal: aim, fresh: freshLevel });
  return {
    read: told,
    facts: [
      fact(
        `one ${percent(CHANGE)} change`,
        `${part(CHANGE)}, then ${label} ${after(1)}; after two ${after(2)}`,
      ),
      ...(fresh !== undefined && whole !== undefined && whole > LARGEST
        ? [
            fact(
              'by water changes alone',
              `${percent(whole)} in one: the wrong tool, the corals will use it up`,
            ),
          ]
        : []),
      fact('left alone', leftAlone(id, now.value - aim)),
    ],
    working: [
      `after one: ${show(freshLevel)} + (${show(now.value)} - ${show(freshLevel)}) x ${1 - CHANGE} = ${after(1)}`,
    ],
    sources: ['mixing', 'practice'],
    missing,
  };
}

/** How long corals take to use up what is too much. */
function leftAlone(id: keyof typeof AIM, excess: number): string {
  if (id === 'magnesium')
    return 'corals use very little of it: it comes down with water changes alone (common practice)';
  const perDay = id === 'calcium' ? USED_A_DAY.map((dkh) => dkh * CA_PER_DKH) : USED_A_DAY;
  const [slow, quick] = perDay.map((used) => Math.ceil(excess / used - 1e-9));
  return `about ${span(String(quick), String(slow))} days, if corals use ${fixed(perDay[0] ?? 0, 1)} to ${fixed(perDay[1] ?? 0, 1)} ${parameter(id).unit} a day (common practice); with few corals longer`;
}

/** Below this most kits show none, mg/L: common practice. */
const AMMONIA_KIT = parameter('ammonia').kitResolution;
const NO_SHARE =
  'the harmful form, more with pH and warmth; no share given: no formula checked against a table';

/** Litres that halve it, and how many such changes bring it under what a kit shows. */
export function ammoniaNumbers(known: Known): Numbers {
  const { part } = known.water;
  const changes = changesOf(known, [CHANGE, LARGEST]);
  const facts = [...changes.facts, fact('free ammonia', NO_SHARE)];
  if (known.now === undefined) return { ...changes, facts, missing: ['now', ...changes.missing] };
  const { value: now, notes } = known.now;
  const after = (fraction: number): string => shownMgL(afterChanges({ now, fresh: 0, fraction }));
  const count = changesToGoal({ now, goal: AMMONIA_KIT, fresh: 0 }, LARGEST);
  return {
    ...changes,
    read: [...changes.read, `ammonia and ammonium together ${shownMgL(now)}`, ...notes],
    facts: [
      fact(
        'to halve it',
        `${percent(LARGEST)}, ${part(LARGEST)}: ${shownMgL(now)} becomes ${after(LARGEST)}`,
      ),
      fact('a gentler one', `${percent(CHANGE)}, ${part(CHANGE)}: becomes ${after(CHANGE)}`),
      ...(count === undefined || now <= AMMONIA_KIT
        ? []
        : [
            fact(
              `down to ${shownMgL(AMMONIA_KIT)}`,
              `after ${count.whole} ${count.whole === 1 ? 'change' : 'changes'} of a half, if nothing makes more`,
            ),
          ]),
      fact('free ammonia', NO_SHARE),
    ],
    working: [`${shownMgL(now)} x (1 - ${LARGEST}) = ${after(LARGEST)}, new water without ammonia`],
  };
}

function shownMgL(level: number): string {
  return printed('ammonia', level);
}
