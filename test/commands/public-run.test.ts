import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { answer, type Answer } from '../../commands/answer.ts';
import { defineCommand, withoutKeep, type Context, type OwnContext } from '../../commands/command.ts';
import { runWithDefaults, withDefaults } from '../../commands/defaults.ts';
import type { Keep } from '../../commands/keep.ts';
import { quantityOption, textOption } from '../../commands/options.ts';
import { openStore } from '../../bot/store/open.ts';
import { managed } from './desk/managed.ts';
import { keepMarked, MARKS, NOW_MS } from './marked.ts';
import { unmarked } from '../../core/quantity/marks.ts';

const keep = openStore({ file: ':memory:', nowMs: () => NOW_MS }).keepFor('100000000000000001');
keepMarked(keep, NOW_MS);
const asking = { ...managed().context, nowMs: NOW_MS, zone: 'UTC', keep };

const about = { summary: 'For the tests', example: '/leak' } as const;
const options = z.strictObject({
  volume: quantityOption('volume', 'Net water', 'volume').optional(),
  at: textOption('A spot').optional(),
});

/** All that can be reached from a value by names and without calling anything. */
function reached(from: unknown, found = new Set<unknown>()): ReadonlySet<unknown> {
  if (typeof from !== 'object' || from === null || found.has(from)) return found;
  found.add(from);
  for (const key of Reflect.ownKeys(from)) reached(Reflect.get(from, key), found);
  return found;
}

/** What a public run is handed, and a command that leaks all it can. */
function leaking(): { readonly handed: Context[]; readonly command: ReturnType<typeof leak> } {
  const handed: Context[] = [];
  return { handed, command: leak((context) => handed.push(context)) };
}

function leak(look: (context: Context) => void) {
  return defineCommand({
    path: ['leak'],
    ...about,
    options,
    run: (_, context): Answer => {
      look(context);
      const got = (context as unknown as { readonly keep?: Keep }).keep;
      return answer({ headline: `Seen: ${String(got?.tankInUse()?.name)}.` });
    },
  });
}

/** The name of the tank in use. */
function seen({ keep: kept }: OwnContext): Answer {
  return answer({ headline: `${kept?.tankInUse()?.name ?? 'nothing'}.` });
}

describe('a public run', () => {
  it('has no keep, whatever it does to get one', () => {
    const { handed, command } = leaking();
    for (const input of [{}, { volume: '3 L' }, { at: 'left' }]) {
      const given = runWithDefaults(command, input, asking);
      expect(given.headline).toBe('Seen: undefined.');
      expect(command.run(input, asking).headline).toBe('Seen: undefined.');
    }
    expect(handed).toHaveLength(6);
    for (const context of handed) {
      expect(Reflect.ownKeys(context).toSorted()).toEqual(['nowMs', 'server', 'zone']);
      expect(reached(context).has(keep)).toBe(false);
    }
  });

  it('gets a value of the tank in use by the one function that hides the answer, and no other way', () => {
    const { command } = leaking();
    expect(withDefaults(command, {}, asking)).toMatchObject({
      input: { volume: `${unmarked(617.3)} L` },
      hidden: true,
    });
    const typed = withDefaults(command, { volume: '3 L' }, asking);
    expect(typed).toEqual({ input: { volume: '3 L' }, read: [], units: [], hidden: false });
  });

  it('of a command with inputs of the asker’s own has one for those alone, and hides them', () => {
    const command = defineCommand({
      path: ['look'],
      ...about,
      options,
      run: (_, context): Answer => seen({ ...context, keep: undefined }),
      own: { when: ({ at }) => at !== undefined, run: (_, context): Answer => seen(context) },
    });
    const headline = (input: object): string => runWithDefaults(command, { ...input }, asking).headline;
    expect([headline({ volume: '3 L' }), headline({ volume: '3 L', at: 'left' })]).toEqual([
      'nothing.',
      'Quorvath.',
    ]);
    expect(withDefaults(command, { volume: '3 L', at: 'left' }, asking).hidden).toBe(true);
    expect(withDefaults(command, { volume: '3 L' }, asking).hidden).toBe(false);
  });

  it('cannot be written so that it names a keep', () => {
    defineCommand({
      path: ['leak'],
      ...about,
      options,
      // @ts-expect-error a public context has no keep
      run: (_, context): Answer => answer({ headline: String(context.keep) }),
    });
    defineCommand({
      path: ['leak'],
      ...about,
      options,
      // @ts-expect-error nor one that is taken out of it
      run: (_, { keep: kept }): Answer => answer({ headline: String(kept) }),
    });
    // @ts-expect-error nor by a run that asks for more than it gets
    defineCommand({
      path: ['leak'],
      ...about,
      options,
      run: (_: object, context: OwnContext): Answer => answer({ headline: String(context.keep) }),
    });
    // @ts-expect-error what is kept cannot be looked for with what a public run has
    const own: OwnContext = withoutKeep(asking);
    expect(own.keep).toBeUndefined();
  });
});

describe('a private run', () => {
  it('has what its asker keeps; every answer is hidden', () => {
    const command = defineCommand({
      path: ['mine'],
      ...about,
      options,
      private: true,
      run: (_, context): Answer => seen(context),
    });
    expect(runWithDefaults(command, { volume: '3 L' }, asking).headline).toBe(`${MARKS[0]}.`);
    expect(withDefaults(command, { volume: '3 L' }, asking).hidden).toBe(true);
    expect(command.run({}, { nowMs: 0 }).headline).toBe('nothing.');
  });
});
