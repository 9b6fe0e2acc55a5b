import type Database from 'better-sqlite3';
import { MOST_HELPERS, SHOWN_MS, type Showing, type Viewer } from '../../commands/shown.ts';
import { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';
import { roomFor } from './limits.ts';
import { checkPersonId, type People } from './people.ts';

/** Which tanks are shown to whom now; one that is over does not exist. */
export interface ShownTanks {
  /** By the owner: of one tank. */
  readonly viewers: (owner: number, tank: number) => readonly Viewer[];
  /** The tank must be the owner's. */
  readonly show: (owner: number, tank: number, helperId: string) => Viewer;
  readonly hide: (owner: number, tank: number, helperId: string) => boolean;
  /** By the helper, with the key of the owner. */
  readonly shownTo: (helper: number) => readonly FoundShowing[];
  /** By the owner, of all tanks: for the export. */
  readonly shownBy: (owner: number) => readonly Pick<Showing, 'tankId' | 'untilMs'>[];
  /** Removes what is over, with helpers of whom nothing else is kept. */
  readonly forgetOver: () => void;
}

export interface FoundShowing extends Showing {
  readonly owner: number;
}

interface Grant {
  readonly owner: number;
  readonly helper: number;
  readonly tank: number;
}

export function openShownTanks(db: Database.Database, people: People, nowMs: () => number): ShownTanks {
  const viewers = db.prepare<[number, number, number], Viewer>(`
    SELECT discord_id AS helperId, until_ms AS untilMs FROM shown_tank JOIN person ON person.id = helper
    WHERE owner = ? AND tank = ? AND ? < until_ms ORDER BY until_ms, helper`);
  const shownTo = db.prepare<[number, number], FoundShowing>(`
    SELECT owner, discord_id AS ownerId, tank AS tankId, name AS tankName, until_ms AS untilMs
    FROM shown_tank JOIN person ON person.id = owner JOIN tank ON tank.id = shown_tank.tank
    WHERE helper = ? AND ? < until_ms ORDER BY until_ms, tank`);
  const shownBy = db.prepare<[number, number], Pick<Showing, 'tankId' | 'untilMs'>>(`
    SELECT tank AS tankId, until_ms AS untilMs FROM shown_tank
    WHERE owner = ? AND ? < until_ms ORDER BY until_ms, tank`);
  const put = db.prepare<[Grant & { readonly untilMs: number }]>(`
    INSERT INTO shown_tank (owner, helper, tank, until_ms) VALUES (@owner, @helper, @tank, @untilMs)
    ON CONFLICT (tank, helper) DO UPDATE SET until_ms = excluded.until_ms`);
  const erase = db.prepare<[Grant]>(
    'DELETE FROM shown_tank WHERE owner = @owner AND helper = @helper AND tank = @tank',
  );
  const eraseOver = db
    .prepare<[number], number>('DELETE FROM shown_tank WHERE until_ms <= ? RETURNING helper')
    .pluck();

  const forgetOver = db.transaction((): void => {
    for (const helper of new Set(eraseOver.all(nowMs()))) people.forgetEmpty(helper);
  });
  const show = db.transaction((owner: number, tank: number, helperId: string): Viewer => {
    forgetOver();
    const helper = people.keyOrNew(checkPersonId(helperId));
    if (helper === owner) throw new Problem(say('tank.seenAnyway'), { field: 'who' });
    const others = viewers.all(owner, tank, nowMs()).filter((one) => one.helperId !== helperId);
    roomFor('who', others.length + 1, MOST_HELPERS, 'log.roomForHelpers');
    const untilMs = nowMs() + SHOWN_MS;
    put.run({ owner, helper, tank, untilMs });
    return { helperId, untilMs };
  });
  const hide = db.transaction((owner: number, tank: number, helperId: string): boolean => {
    forgetOver();
    const helper = people.keyOf(helperId);
    const isTaken = erase.run({ owner, helper, tank }).changes === 1;
    if (isTaken) people.forgetEmpty(helper);
    return isTaken;
  });
  return {
    viewers: (owner, tank) => viewers.all(owner, tank, nowMs()),
    show,
    hide,
    shownTo: (helper) => shownTo.all(helper, nowMs()),
    shownBy: (owner) => shownBy.all(owner, nowMs()),
    forgetOver,
  };
}
