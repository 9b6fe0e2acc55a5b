import { expect, it } from 'vitest';
import { openStore } from '../../../bot/store/open.ts';
import { openTalks } from '../../../bot/talks.ts';
import { rowOf } from '../../../commands/ask/kinds.ts';
import { ask, askCommand } from '../../../commands/ask.ts';
import { plain, scriptedReader } from '../../scripted-reader.ts';
import { problemOf } from '../text.ts';

const marked = 'added a torch left back on the sand, [3 heads](length coral)';

/** Waits for the row of this kind: without it nothing that plain words reach writes. */
it.skipIf(rowOf('coral-record') === undefined)(
  'what has written leaves no text that a button could run',
  () => {
    const keep = openStore({ file: ':memory:', nowMs: () => 0 }).keepFor('100000000000000001');
    const profile = { kind: 'mixed', volumeBasis: 'counted', units: {}, targets: {} } as const;
    const tank = keep.addTank({ ...profile, name: 'Pantry', netVolumeL: 250 });
    const { talkOf } = openTalks(() => 0);
    const reader = scriptedReader([
      {
        marked,
        kinds: [
          ['tank-plan', 0.35],
          ['coral-record', 0.3],
        ],
      },
    ]);
    const at = (place: string) => ({ nowMs: 0, keep, reader, talk: talkOf('me', [place], { at: 'here' }) });
    const first = at('here');
    ask(plain(marked), first);
    first.talk.askedAt('call 1');
    expect(keep.corals(tank.id)).toHaveLength(0);
    const done = askCommand.run({ as: 'coral-record' }, at('call 1'));
    expect(keep.corals(tank.id)).toHaveLength(1);
    expect(done.next.map(({ command }) => command)).not.toContain('ask');
    expect(done.next.map(({ command }) => command)).not.toContain('coral add');
    for (const place of ['call 1', 'here'])
      expect(problemOf(() => askCommand.run({ as: 'coral-record' }, at(place))).message).toContain(
        'no longer',
      );
    expect(keep.corals(tank.id)).toHaveLength(1);
  },
);
