import { NEW_TANK_DAYS, testPlan, type TestPlanKind } from '../../core/care/test-plan.ts';
import { parameter } from '../../core/water/parameter.ts';
import { say } from '../../core/wording/say.ts';
import type { Table } from '../answer.ts';
import type { Tank } from '../keep.ts';

const DAY_MS = 86_400_000;

/** How often to test what in this tank; a mixed reef where no tank is known. */
export function planTable(tank: Tank | undefined, nowMs: number): Table {
  const kind = planKind(tank, nowMs);
  return {
    head: [say('checkup.headTest'), say(kind === 'new' ? 'checkup.headOftenNew' : 'checkup.headOften')],
    rows: testPlan(kind).map(({ parameter: id, often }) => [parameter(id).label, often]),
  };
}

export function planKind(tank: Tank | undefined, nowMs: number): TestPlanKind {
  if (tank === undefined) return 'mixed';
  const startedMs = tank.startedOn === undefined ? -Infinity : Date.parse(`${tank.startedOn}T00:00:00Z`);
  return nowMs - startedMs < NEW_TANK_DAYS * DAY_MS ? 'new' : tank.kind;
}
