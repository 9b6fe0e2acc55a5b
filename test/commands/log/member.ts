import { openStore } from '../../../bot/store/open.ts';
import type { Answer } from '../../../commands/answer.ts';
import type { Command } from '../../../commands/command.ts';
import { runWithDefaults } from '../../../commands/defaults.ts';
import type { Keep, Tank, TankProfile } from '../../../commands/keep.ts';

/** Saturday 3 January 2026, 18:00 UTC: noon in Chicago. */
export const START_MS = Date.UTC(2026, 0, 3, 18);
export const DAY_MS = 86_400_000;
const zone = 'America/Chicago';

/** 150 US gallons of net water: 567.8 L (1 US gal = 3.785411784 L). */
const profile: TankProfile = {
  name: 'Reef',
  kind: 'mixed',
  netVolumeL: 150 * 3.785411784,
  volumeBasis: 'said by the member',
  units: {},
  targets: {},
};

/** A member of a new store with one tank and a clock that is moved by hand. */
export interface Member {
  readonly keep: Keep;
  readonly tank: Tank;
  /** Another member of the same store. */
  readonly other: Keep;
  readonly run: (command: Command, input?: Readonly<Record<string, unknown>>) => Answer;
  /** Lets days go by. */
  readonly wait: (days: number) => void;
}

export function member(changes: Partial<TankProfile> = {}): Member {
  let nowMs = START_MS;
  const store = openStore({ file: ':memory:', nowMs: () => nowMs });
  const keep = store.keepFor('100000000000000001');
  const tank = keep.addTank({ ...profile, ...changes });
  return {
    keep,
    tank,
    other: store.keepFor('100000000000000002'),
    run: (command, input = {}) => runWithDefaults(command, input, { nowMs, zone, keep }),
    wait: (days) => {
      nowMs += days * DAY_MS;
    },
  };
}

/** The value of a fact by its label. */
export function factOf({ facts }: Answer, label: string): string | undefined {
  const found = facts.find((fact) => fact.label === label);
  return found === undefined ? undefined : `${found.value} ${found.verdict ?? ''}`.trim();
}
