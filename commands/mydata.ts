import { counted } from '../core/quantity/format.ts';
import { say } from '../core/wording/say.ts';
import { z } from 'zod';
import { answer, type Answer, type Fact } from './answer.ts';
import { action } from './calls.ts';
import { defineCommand } from './command.ts';
import type { Keep } from './keep.ts';
import { HELD_DAYS } from './held.ts';
import { keepOf } from './tank/asked-tank.ts';
import { TOLD_DAYS } from './told.ts';

/** A file above this is written without line breaks, so that it still fits where it is sent. */
const WIDE_FILE = 4_000_000;

const BACKUPS =
  'Daily backups still hold it until they are replaced: seven are kept, so it leaves them after seven days.';

const NOTHING = 'Nothing is kept of you here: no tank, no reading, no note, no id.';

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
    const none = keep.tanks().length === 0 ? ' You have no tank here.' : '';
    return answer({
      headline: `Everything kept of you is in the file.${none}`,
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
    return facts.length > 0 ? erased(facts) : answer({ headline: NOTHING });
  },
});

function asked(facts: readonly Fact[]): Answer {
  return answer({
    headline: 'Nothing is removed yet. Erasing removes everything kept of you, and it cannot be undone.',
    facts,
    steps: ['Keep a copy first: /mydata export.', 'Then erase: /mydata erase sure:yes.'],
    cautions: [BACKUPS],
    next: [action(say('mydata.eraseEverything'), 'mydata erase', { sure: 'yes' })],
  });
}

function erased(facts: readonly Fact[]): Answer {
  return answer({ headline: 'Everything kept of you is removed.', facts, cautions: [BACKUPS] });
}

/** What is kept: one line a tank with what hangs on it, then the rest. */
function keptOf(keep: Keep): readonly Fact[] {
  const zone = keep.zone();
  return [
    ...keep.tanks().map(({ id, name }) => ({ label: name, value: hangingOn(keep, id) })),
    ...countFact('reminders', keep.reminders()),
    ...countFact('hand-overs', keep.handOvers()),
    ...countFact('tanks shown to you', keep.shownToMe()),
    ...countFact(`threads and posts remembered for ${TOLD_DAYS} days`, keep.told()),
    ...countFact(`answers and buttons held for ${HELD_DAYS} days`, keep.held()),
    ...(zone === undefined ? [] : [{ label: 'time zone', value: zone }]),
  ];
}

function hangingOn(keep: Keep, tankId: number): string {
  const corals = keep.corals(tankId).length;
  const points = keep.lightPoints(tankId).length;
  const watches = keep.watches(tankId).length;
  return [
    counted(keep.readings(tankId, {}).length, 'reading'),
    counted(keep.additions(tankId, {}).length, 'addition'),
    ...(corals === 0 ? [] : [counted(corals, 'coral')]),
    ...(watches === 0 ? [] : [counted(watches, 'watched border')]),
    ...(points === 0 ? [] : [counted(points, 'light reading')]),
  ].join(', ');
}

function countFact(label: string, all: readonly unknown[]): readonly Fact[] {
  return all.length === 0 ? [] : [{ label, value: String(all.length) }];
}

export const mydataCommands = [exportCommand, eraseCommand] as const;
