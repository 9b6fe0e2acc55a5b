import type { CoralEntry } from '../../core/corals/entry.ts';
import { pairRoom } from '../../core/corals/pair-room.ts';
import type { AppliedRule } from '../../core/corals/pairs.ts';
import { cm } from '../../core/corals/say.ts';
import { spreads } from '../../core/corals/spreading.ts';
import { based } from './based.ts';

/** How two kinds stand beside each other, and what that rests on. Edge to edge at full stretch. */
export interface PairSaid {
  readonly names: string;
  readonly verdict: 'keep apart' | 'watch' | 'may stand close' | 'nothing known against it';
  readonly moveBelowCm: number;
  readonly watchBelowCm: number;
  /** The gaps alone, and all that is known. */
  readonly room: string;
  readonly why: string;
}

/** What is known of two kinds, worded for a line: their sting and reach, and soft beside stony. */
export function pairSaid(a: CoralEntry, b: CoralEntry): PairSaid {
  const { need, softBesideStony, moveBelowCm, watchBelowCm } = pairRoom(a, b);
  const { rules, ally, disagree } = need.facts;
  const spreading = a === b ? [] : [a, b].filter(spreads);
  const told = [...rules, ...(softBesideStony === undefined ? [] : [softBesideStony])];
  return {
    names: `${a.names.common[0]} + ${b.names.common[0]}`,
    verdict: verdictOf(
      moveBelowCm,
      spreading.length > 0 || watchBelowCm > 0,
      ally !== undefined || rules.some(getOn),
    ),
    moveBelowCm,
    watchBelowCm,
    room: roomWords(moveBelowCm, watchBelowCm),
    why: [
      ...(told.length === 0 && ally === undefined
        ? [based('no rule for the two: from their reach', a.sting.reachBasis, b.sting.reachBasis)]
        : told.map(ruleWords)),
      ...(ally === undefined ? [] : [based(`lives beside ${ally.text}, ${ally.confidence}`, ally.basis)]),
      ...spreading.map((entry) => `${entry.names.common[0]}: spreads over neighbours (from memory)`),
      ...(disagree ? ['sources differ: the stronger warning is kept'] : []),
    ].join('; '),
  };
}

function roomWords(moveBelowCm: number, watchBelowCm: number): string {
  const gaps = [
    ...(moveBelowCm > 0 ? [`move below ${cm(moveBelowCm)}`] : []),
    ...(watchBelowCm > moveBelowCm ? [`watch below ${cm(watchBelowCm)}`] : []),
  ];
  return gaps.length === 0 ? 'leave room to grow' : gaps.join('; ');
}

function ruleWords({ rule: { effect, note, effectBasis, gapCm, gapBasis } }: AppliedRule): string {
  const what = based(note === undefined ? effect : `${effect}: ${note}`, effectBasis);
  return `${what}, ${based(cm(gapCm), gapBasis)}`;
}

function getOn({ rule: { effect } }: AppliedRule): boolean {
  return effect.endsWith('tolerated');
}

function verdictOf(moveBelowCm: number, watched: boolean, known: boolean): PairSaid['verdict'] {
  if (moveBelowCm > 0) return 'keep apart';
  if (known) return 'may stand close';
  return watched ? 'watch' : 'nothing known against it';
}
