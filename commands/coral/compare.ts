import { z } from 'zod';
import type { CoralEntry } from '../../core/corals/entry.ts';
import { Problem } from '../../core/problem.ts';
import { cm } from '../../core/corals/say.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { textOption } from '../options.ts';
import { askedKind, fullName, tellingName, type AskedKind } from './asked-kind.ts';
import { comparedPapers, compareTable, LETTERS_READ } from './compare-table.ts';
import { hazardCautions } from './hazard-lines.ts';
import { pairSaid, type PairSaid } from './pair-words.ts';

export const compareCoralsCommand = defineCommand({
  path: ['coral', 'compare'],
  summary: 'Two or three corals side by side, and whether they may stand together',
  example: '/coral compare a:torch b:branching hammer',
  options: z.strictObject({
    a: textOption('A coral by any name', { suggest: 'coral', max: 80 }),
    b: textOption('Another', { suggest: 'coral', max: 80 }),
    c: textOption('A third', { suggest: 'coral', max: 80 }).optional(),
  }),
  run: (input): Answer => {
    const asked = (['a', 'b', 'c'] as const).flatMap((field) => {
      const given = input[field];
      return given === undefined ? [] : [{ ...askedKind(given, field), field, given }];
    });
    const entries = different(asked);
    const pairs = pairsOf(entries);
    return answer({
      headline: headline(pairs),
      read: [...asked.flatMap(({ read }) => read), LETTERS_READ],
      table: compareTable(entries),
      facts: pairs.map(({ names, room, verdict }) => ({ label: names, value: room, verdict })),
      steps: [
        'Measure the gap from the tips at full stretch, at night with a dim torch.',
        'Leave half as much again on the side the water carries the sweepers to.',
      ],
      working: [...pairs.map(({ names, why }) => `${names}: ${why}`), ...comparedPapers(entries)],
      dangers: hazardCautions(entries),
      cautions: ['No distance is a promise: some pairs touch for years, others fight in a week.'],
      next: entries.map((entry) =>
        action(say('coral.about', { coral: entry.names.common[0] }), 'coral about', {
          coral: tellingName(entry),
        }),
      ),
    });
  },
});

/** @throws Problem when two names mean one coral. */
function different(
  asked: readonly (AskedKind & { readonly field: string; readonly given: string })[],
): readonly CoralEntry[] {
  for (const [index, { entry, field, given }] of asked.entries()) {
    if (asked.slice(0, index).some((other) => other.entry === entry)) {
      throw new Problem(say('coral.twice', { coral: fullName(entry) }), {
        field,
        given,
        hint: say('coral.hintNameAnother'),
      });
    }
  }
  return asked.map(({ entry }) => entry);
}

function pairsOf(entries: readonly CoralEntry[]): readonly PairSaid[] {
  return entries
    .flatMap((a, index) => entries.slice(index + 1).map((b) => pairSaid(a, b)))
    .sort((one, other) => wants(other) - wants(one));
}

function wants({ moveBelowCm, watchBelowCm }: PairSaid): number {
  return moveBelowCm * 1000 + watchBelowCm;
}

/** The pair that wants most room is the answer. */
function headline(pairs: readonly PairSaid[]): string {
  const [worst] = pairs;
  if (worst === undefined) throw new Error('a comparison of one');
  const { names, verdict, moveBelowCm, watchBelowCm } = worst;
  const room = cm(moveBelowCm > 0 ? moveBelowCm : watchBelowCm);
  const pair = names.replace(' + ', ' and ');
  const most = pairs.length > 1 ? ' Of all here they want most room.' : '';
  switch (verdict) {
    case 'keep apart':
      return `Not together: keep ${room} or more between ${pair}.${most}`;
    case 'may stand close':
      return watchBelowCm > 0
        ? `Mostly yes: ${pair} may stand close; watch them below ${room}.${most}`
        : `Mostly yes: ${pair} may stand close; leave both room to spread.${most}`;
    case 'watch':
      return watchBelowCm > 0
        ? `Perhaps: give ${pair} ${room} or more, and watch them at night.${most}`
        : `Perhaps: ${pair} do not sting far, but one spreads over the other; leave bare sand between.${most}`;
    case 'nothing known against it':
      return `I know of nothing against ${pair} side by side; leave room to grow.${most}`;
  }
}
