import { say } from '../core/wording/say.ts';
import { z } from 'zod';
import { unitFacts } from './unit-facts.ts';
import { answer, type Answer, type Fact } from './answer.ts';
import { action } from './calls.ts';
import { defineCommand } from './command.ts';
import type { Keep } from './keep.ts';
import { HELD_DAYS } from './held.ts';
import { keepOf } from './tank/asked-tank.ts';
import { TOLD_DAYS } from './told.ts';

/** A file above this is written without line breaks, so that it still fits where it is sent. */
const WIDE_FILE = 4_000_000;

const exportCommand = defineCommand({
  path: ['mydata', 'export'],
  summary: 'A file with everything kept of you here',
  example: '/mydata export',
  private: true,
  options: z.strictObject({}),
  run: (_, context): Answer => {
    const keep = keepOf(context);
    const all = keep.exportAll();
    const wide = JSON.stringify(all, null, 2);
    const text = wide.length > WIDE_FILE ? JSON.stringify(all) : wide;
    const facts = keptOf(keep);
    return answer({
      headline: say(keep.tanks().length === 0 ? 'mydata.inTheFileNoTank' : 'mydata.inTheFile'),
      facts,
      file: { name: 'sumpside-my-data.json', text },
    });
  },
});

const eraseCommand = defineCommand({
  path: ['mydata', 'erase'],
  summary: 'Removes everything kept of you here; asks once before it does',
  example: '/mydata erase',
  private: true,
  options: z.strictObject({
    sure: z.enum(['yes']).describe('Leave it out at first: the answer says what would go').optional(),
  }),
  run: ({ sure }, context): Answer => {
    const keep = keepOf(context);
    const facts = keptOf(keep);
    if (sure === undefined && facts.length > 0) return asked(facts);
    keep.eraseAll();
    return facts.length > 0 ? erased(facts) : answer({ headline: say('mydata.nothingKept') });
  },
});

function asked(facts: readonly Fact[]): Answer {
  return answer({
    headline: say('mydata.nothingRemovedYet'),
    facts,
    steps: [say('mydata.copyFirst'), say('mydata.thenErase')],
    cautions: [say('mydata.backups')],
    next: [action(say('mydata.eraseEverything'), 'mydata erase', { sure: 'yes' })],
  });
}

function erased(facts: readonly Fact[]): Answer {
  return answer({ headline: say('mydata.removed'), facts, cautions: [say('mydata.backups')] });
}

/** What is kept: one line a tank with what hangs on it, then the rest. */
function keptOf(keep: Keep): readonly Fact[] {
  const zone = keep.zone();
  const units = unitFacts(keep.units()).map(({ value }) => value);
  return [
    ...keep.tanks().map(({ id, name }) => ({ label: name, value: hangingOn(keep, id) })),
    ...countFact(say('mydata.reminders'), keep.reminders()),
    ...countFact(say('mydata.handOvers'), keep.handOvers()),
    ...countFact(say('mydata.tanksShown'), keep.shownToMe()),
    ...countFact(say('mydata.threads', { days: TOLD_DAYS }), keep.told()),
    ...countFact(say('mydata.held', { days: HELD_DAYS }), keep.held()),
    ...(zone === undefined ? [] : [{ label: say('mydata.zone'), value: zone }]),
    ...(units.length === 0 ? [] : [{ label: say('mydata.units'), value: units.join(', ') }]),
  ];
}

function hangingOn(keep: Keep, tankId: number): string {
  const corals = keep.corals(tankId).length;
  const points = keep.lightPoints(tankId).length;
  const watches = keep.watches(tankId).length;
  return [
    say('mydata.readings', { count: keep.readings(tankId, {}).length }),
    say('mydata.additions', { count: keep.additions(tankId, {}).length }),
    ...(corals === 0 ? [] : [say('mydata.corals', { count: corals })]),
    ...(watches === 0 ? [] : [say('mydata.watches', { count: watches })]),
    ...(points === 0 ? [] : [say('mydata.lightReadings', { count: points })]),
  ].join(', ');
}

function countFact(label: string, all: readonly unknown[]): readonly Fact[] {
  return all.length === 0 ? [] : [{ label, value: String(all.length) }];
}

export const mydataCommands = [exportCommand, eraseCommand] as const;
