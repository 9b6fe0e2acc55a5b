import { rampPlan } from '../light/ramp.ts';
import { basisName, basisWords } from './basis-words.ts';
import type { Basis, Bases } from './basis.ts';
import type { CoralEntry } from './entry.ts';
import type { Origin } from './scene.ts';

/** Where a piece of some origin begins and how fast it may go up. */
interface OriginPace {
  /** Part of the entry's start value. */
  readonly factor: number;
  readonly raisePercentAWeek: number;
  readonly why: string;
  readonly basis: Basis;
}

const rule = (note: string): Basis => ({ kind: 'project rule', note });

/**
 * Common practice: a tank-grown piece begins near the start of its range, wild and maricultured pieces lower and slower,
 * pieces from deeper slopes lowest (light needs follow the light a coral grew in, Chalker et al. 1983: compensation and
 * saturation light fell steadily from 1 to 45 m). How much lower is a project rule; 10 % a week is common practice.
 */
const originPace: Readonly<Record<Origin, OriginPace>> = {
  'tank-grown': {
    factor: 1,
    raisePercentAWeek: 10,
    why: 'A tank-grown piece begins at the start value.',
    basis: { kind: 'practice' },
  },
  unknown: {
    factor: 0.9,
    raisePercentAWeek: 8,
    why: 'Where it grew is not known, so it begins a little lower.',
    basis: rule('9 tenths of the start value'),
  },
  maricultured: {
    factor: 0.8,
    raisePercentAWeek: 7,
    why: 'A maricultured piece begins lower and goes up more slowly.',
    basis: rule('8 tenths of the start value'),
  },
  wild: {
    factor: 0.7,
    raisePercentAWeek: 7,
    why: 'A wild piece begins lower and goes up more slowly.',
    basis: rule('7 tenths of the start value'),
  },
  deep: {
    factor: 0.6,
    raisePercentAWeek: 5,
    why: 'A piece from a deeper slope begins lowest and goes up slowest.',
    basis: rule('6 tenths of the start value'),
  },
};

/** What to look for, and what to do then. */
export interface LightSigns {
  readonly signs: readonly string[];
  readonly action: string;
}

export interface CoralLight {
  /** False for those that live by food. */
  readonly photosynthetic: boolean;
  readonly lowPpfd: number;
  readonly highPpfd: number;
  /** Where this piece begins, umol m-2 s-1, to the nearest 5. */
  readonly startPpfd: number;
  readonly raisePercentAWeek: number;
  /** Weeks from the start to the middle of the range at that pace; 0 where it already begins there. */
  readonly weeks: number;
  readonly why: string;
  /** First, since it is the commoner harm. */
  readonly tooMuch: LightSigns;
  readonly tooLittle: LightSigns;
  readonly rangeBasis: string;
  readonly startBasis: string;
  readonly signsBasis: string;
}

const tooMuch: LightSigns = {
  signs: [
    'it pales or bleaches, first where the lamp is nearest',
    'it stays shut, tight or shrunken through the day',
    'tissue melts or pulls back from the top edges',
  ],
  action:
    'Take a third of the light away today: dim, shade or move it lower. Wait two weeks, then go up more slowly.',
};
const tooLittle: LightSigns = {
  signs: [
    'it stretches: long necks, stalks or tentacles towards the lamp',
    'it darkens to brown, or fades over weeks',
    'it grows flat and thin, or not at all',
  ],
  action:
    'Go up by about 10 % a week, or one step higher at a time. Never from the sand to the top in one go.',
};
/** Those that live by food: light harms them by the algae that settle on them. */
const darkTooMuch: LightSigns = {
  signs: ['algae settle on it', 'it opens only when the lamp is off'],
  action: 'Shade it, or move it under an overhang; the lamp stays as the others need it.',
};
const darkTooLittle: LightSigns = {
  signs: ['none: it does not live by light'],
  action: 'Thin flesh and closed polyps are hunger: feed it.',
};

/** The middle of a range, to the nearest 5: where a raise leads. Check: 75 to 200 -> 140. */
export function middleOf({ lowPpfd, highPpfd }: Pick<CoralLight, 'lowPpfd' | 'highPpfd'>): number {
  return Math.round((lowPpfd + highPpfd) / 10) * 5;
}

/** Practice for all signs and steps. */
const practice: Bases = [{ kind: 'practice' }];

/**
 * The light of one coral by where it came from. The range and the start value are the entry's; the start is taken down
 * by `originPace`. Check: 75 to 200, start 110 -> tank-grown 110, wild 75, deep 65 (to the nearest 5).
 */
export function lightFor(entry: CoralEntry, origin: Origin): CoralLight {
  const { lowPpfd, highPpfd, startPpfd: entryStart, basis } = entry.light;
  const pace = originPace[origin];
  const startPpfd = Math.max(5, Math.round((entryStart * pace.factor) / 5) * 5);
  const goalPpfd = middleOf(entry.light);
  const goesUp = entry.photosynthetic && goalPpfd > startPpfd;
  return {
    photosynthetic: entry.photosynthetic,
    lowPpfd,
    highPpfd,
    startPpfd,
    raisePercentAWeek: pace.raisePercentAWeek,
    weeks: goesUp ? rampPlan(startPpfd, goalPpfd, pace.raisePercentAWeek).weeks : 0,
    why: pace.why,
    tooMuch: entry.photosynthetic ? tooMuch : darkTooMuch,
    tooLittle: entry.photosynthetic ? tooLittle : darkTooLittle,
    rangeBasis: basisName(basis),
    startBasis: basisName(basis, [pace.basis]),
    signsBasis: basisWords(practice),
  };
}

export const lampStrengths = ['weak', 'strong'] as const;
export type LampStrength = (typeof lampStrengths)[number];

/** Per cent of a lamp's full power; a wide band, no reading. */
export interface LampBand {
  readonly lowPercent: number;
  readonly highPercent: number;
  readonly basis: string;
  readonly doubt: string;
}

/**
 * Where to try a lamp over corals of middling need when there is no meter: a weak one for its tank from 40 to 80 % of
 * its power, a strong one from 20 to 40 %, each border twice the one before. Project rule, no source; it begins low on
 * purpose, and no light at a coral follows from it.
 */
export function lampBand(strength: LampStrength): LampBand {
  const [lowPercent, highPercent] = strength === 'weak' ? [40, 80] : [20, 40];
  return {
    lowPercent,
    highPercent,
    basis: basisName([rule('a first try without a meter')]),
    doubt: 'Only a first try: lamps, heights and water differ. Begin at its low end and borrow a meter.',
  };
}
