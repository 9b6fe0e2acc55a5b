import { judge, type Value } from '../../core/water/assess.ts';

/** What moves pH, where it was asked to be moved. Common practice, no source. */
export const PH_BY_AIR =
  'Nothing is dosed for pH alone: fresh air in the room, more movement of the surface and a sound alkalinity lift it; it is lowest before the lights come on. A steady 7.8 to 8.4 needs nothing.';

/** What was told of the tank besides its numbers. */
export interface Told {
  readonly isYoung: boolean;
  /** Whether corals are to come, or were spoken of. */
  readonly isForCorals: boolean;
}

/** What a line of readings does not say about a tank for corals. Common practice, no source. */
export function ageSteps(values: readonly Value[], { isYoung, isForCorals }: Told): readonly string[] {
  const judged = judge(values);
  if (judged.some(({ verdict }) => verdict === 'urgent')) return [];
  const isBare = judged.some(
    ({ parameter: id, verdict }) => (id === 'nitrate' || id === 'phosphate') && verdict === 'low',
  );
  if (isYoung)
    return [
      `A tank this young is still changing${isBare ? ', and its nutrients read zero' : ''}: wait some weeks more, or begin with one hardy soft coral and watch it.`,
    ];
  if (!isForCorals) return [];
  return ['How old is the tank, and how long have these numbers held? That says more than one good line.'];
}
