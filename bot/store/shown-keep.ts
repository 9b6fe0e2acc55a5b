import type { Showing, ShownKeep, ShownTank } from '../../commands/shown.ts';
import type { FoundShowing } from './shown-tanks.ts';
import type { Tables } from './tables.ts';

/** Binds what is shown and seen to one person at a time; see `openKeeps`. */
export function openShownKeeps({
  people,
  tanks,
  glasses,
  corals,
  readings,
  shownTanks,
}: Tables): (discordId: string) => ShownKeep {
  return (id) => {
    const me = (): number => people.keyOf(id);
    const has = (tankId: number): boolean => tanks.get(me(), tankId) !== undefined;
    const seen = (tankId: number): ShownTank | undefined => {
      const found = shownTanks.shownTo(me()).find((one) => one.tankId === tankId);
      const tank = found && tanks.get(found.owner, tankId);
      if (found === undefined || tank === undefined) return undefined;
      const { owner } = found;
      return {
        ...withoutKey(found),
        tank,
        glass: glasses.get(owner, tankId),
        latest: readings
          .latest(owner, tankId)
          .map(({ parameter, value, atMs }) => ({ parameter, value, atMs })),
        corals: corals.all(owner, tankId),
      };
    };
    return {
      viewers: (tankId) => shownTanks.viewers(me(), tankId),
      showTo: (tankId, helperId) => (has(tankId) ? shownTanks.show(me(), tankId, helperId) : undefined),
      hideFrom: (tankId, helperId) => shownTanks.hide(me(), tankId, helperId),
      shownToMe: () => shownTanks.shownTo(me()).map(withoutKey),
      shownTank: seen,
    };
  };
}

/** The key of a person stays in the store. */
function withoutKey({ ownerId, tankId, tankName, untilMs }: FoundShowing): Showing {
  return { ownerId, tankId, tankName, untilMs };
}
