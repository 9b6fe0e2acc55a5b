import type { Bases, Statement } from './basis.ts';
import type { CoralGroup, CoralTag } from './kind.ts';
import type { Selector } from './selector.ts';

/** Colony shape, from memory. `table` and `plating` shade; `free-living` lies loose; `disc` is a mushroom or anemone. */
export type FormKind =
  | 'branching'
  | 'table'
  | 'plating'
  | 'wall'
  | 'columnar'
  | 'massive'
  | 'encrusting'
  | 'single polyp'
  | 'free-living'
  | 'tubes'
  | 'tree'
  | 'stalked'
  | 'rods or fans'
  | 'mat'
  | 'disc';

export type FlowBand = 'low' | 'medium' | 'high';
export type Potency = 'none' | 'mild' | 'moderate' | 'strong' | 'severe';
export type Weapon =
  | 'tentacles'
  | 'sweepers'
  | 'filaments'
  | 'polyps'
  | 'contact'
  | 'mucus'
  | 'disc'
  | 'chemical'
  | 'overgrowth';
/** How much calcium and alkalinity growth takes. */
export type StonyDemand = 'none' | 'low' | 'low-medium' | 'medium' | 'medium-high' | 'high';

/** A value and what it rests on. */
export interface Held<T> {
  readonly value: T;
  readonly basis: Bases;
}

export interface CoralNames {
  /** Names a label carries; the first is the one to show. */
  readonly common: readonly [string, ...string[]];
  /** What members call it. The same word may stand in several entries. */
  readonly hobby: readonly string[];
  readonly misspelt: readonly string[];
  readonly basis: Bases;
}

/**
 * A name the coral had, a spelling that is not the accepted one, or a scientific name it is only sold under.
 * `note` narrows it ("Indo-Pacific species"); `now` is its accepted name where that is not the entry's.
 */
export interface OldName {
  readonly name: string;
  readonly kind: 'older' | 'spelling' | 'trade label';
  readonly note?: string;
  readonly now?: string;
  /** What it rests on that this is an older or a trade name of it. */
  readonly basis: Bases;
}

export interface ScientificName {
  /** The accepted name, short: a species, a genus, or two of them ("Xenia / Heteroxenia"). */
  readonly accepted: string;
  /** What the entry takes in, as the reference words it. */
  readonly covers?: string;
  readonly rank: string;
  readonly genera: readonly [string, ...string[]];
  readonly superseded: readonly OldName[];
  /** Full species names this entry takes in, some in older genera; for looking up, not complete. */
  readonly species: readonly string[];
  readonly note?: Statement;
  readonly basis: Bases;
}

/** umol m-2 s-1 at the coral. `startPpfd` is where a new piece begins. Care values, never a measured limit. */
export interface LightNeed {
  readonly lowPpfd: number;
  readonly highPpfd: number;
  readonly startPpfd: number;
  readonly basis: Bases;
}

export interface FlowNeed {
  readonly min: FlowBand;
  readonly max: FlowBand;
  readonly note?: Statement;
  readonly basis: Bases;
}

export interface GrowthForm {
  readonly text: string;
  readonly kinds: readonly [FormKind, ...FormKind[]];
  readonly basis: Bases;
}

export interface Ally {
  readonly text: string;
  readonly who: Selector;
  readonly confidence: 'good' | 'usual' | 'uncertain';
  readonly basis: Bases;
}

/** What it does to neighbours. Reach at full stretch, cm; `keepClearCm` is at least `reachHighCm` and a year of growth. */
export interface Sting {
  readonly potency: Potency;
  readonly potencyBasis: Bases;
  readonly reachLowCm: number;
  readonly reachHighCm: number;
  readonly reachBasis: Bases;
  /** In words, and as kinds; from memory unless a note says otherwise. */
  readonly weapon: string;
  readonly weapons: readonly Weapon[];
  readonly when: 'day' | 'night' | 'both';
  readonly whenNote?: string;
  readonly notes: readonly Statement[];
  readonly allies: readonly Ally[];
  readonly atRisk: readonly Statement[];
  readonly keepClearCm: number;
  readonly keepClearBasis: Bases;
}

export interface ColonySize {
  /** As wide as it is usually let grow in a tank, cm. */
  readonly practicalMaxCm: number;
  readonly basis: Bases;
  /** Widest wild colony on record, cm. */
  readonly naturalMaxCm?: number;
  readonly naturalBasis?: Bases;
}

/** Wild growth, mm per year, over `values` published values. Mixed methods: some are diameter, some radius growth. */
export interface GrowthFigures {
  readonly minMmPerYear: number;
  readonly p10MmPerYear: number;
  readonly medianMmPerYear: number;
  readonly p90MmPerYear: number;
  readonly maxMmPerYear: number;
  readonly values: number;
  readonly species: readonly string[];
  readonly basis: Bases;
}

/** Growth of a colony in cm per year; `range` says what the two ends are. */
export interface Growth {
  readonly lowCmPerYear: number;
  readonly highCmPerYear: number;
  readonly range:
    'recalled' | '10th to 90th percentile' | '10th to 90th percentile of the genus' | 'minimum to maximum';
  readonly basis: Bases;
  readonly notes: readonly Statement[];
  readonly wild?: GrowthFigures;
}

/** Wild depth, m: the shallowest and the deepest value over the species taken in, so it is wide. */
export interface Depth {
  readonly upperM?: number;
  readonly lowerM: number;
  readonly basis: Bases;
}

/** Habitat classes of the Coral Trait Database, drawn there from a 2000 handbook. */
export interface Habitat {
  readonly wave: readonly string[];
  readonly water: readonly string[];
  readonly lifeHistory: readonly string[];
  readonly basis: Bases;
}

/** To people. With `palytoxin` show `palytoxinCaution` (cautions.ts) first. */
export interface PeopleHazard {
  readonly palytoxin: boolean;
  readonly notes: readonly Statement[];
}

/** `cites: 'II'` is CITES Appendix II. The notes are no legal advice. */
export interface Law {
  readonly cites: 'II' | 'not in the listings seen';
  readonly citesBasis: Bases;
  readonly notes: readonly Statement[];
}

/** One kind of coral or anemone as the hobby tells them apart; the basis of every number is kept beside it. */
export interface CoralEntry {
  readonly id: string;
  readonly tier: 'core' | 'extra';
  readonly group: CoralGroup;
  readonly family?: { readonly name: string; readonly basis: Bases };
  readonly tags: readonly CoralTag[];
  readonly names: CoralNames;
  readonly scientific: ScientificName;
  /** False for those that feed themselves without light. */
  readonly photosynthetic: boolean;
  readonly light: LightNeed;
  readonly flow: FlowNeed;
  readonly ground: Held<'rock' | 'sand' | 'rock or sand'>;
  readonly spot: Statement;
  readonly form: GrowthForm;
  readonly shade: Held<boolean>;
  readonly moves: Held<'stays' | 'may move' | 'walks'>;
  readonly sting: Sting;
  readonly susceptible: readonly Statement[];
  readonly size: ColonySize;
  readonly growth: Growth;
  readonly stonyDemand: Held<StonyDemand>;
  readonly feeding: readonly Statement[];
  readonly hardiness: Held<'easy' | 'moderate' | 'demanding'>;
  readonly record: readonly Statement[];
  readonly depth: Depth;
  readonly habitat?: Habitat;
  readonly hazard?: PeopleHazard;
  readonly law: Law;
}
