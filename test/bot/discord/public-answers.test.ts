import * as fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PlaceHere } from '../../../bot/discord/asked/place.ts';
import { run } from '../../../bot/discord/outcome.ts';
import type { Desk, Outcome } from '../../../bot/discord/outcome.ts';
import { openStore } from '../../../bot/store/open.ts';
import type { Store } from '../../../bot/store/open.ts';
import { readLine } from '../../../bot/terminal/read.ts';
import { ask } from '../../ask.ts';
import { commands } from '../../../commands/index.ts';
import type { Keep } from '../../../commands/keep.ts';
import { optionsOf } from '../../../commands/options.ts';
import { quietSettings } from '../../../commands/server.ts';
import { cases } from '../../cases/all.ts';
import { asked, askedOfGuide } from '../../corpus.ts';
import { addition, alkalinity, HOUR_MS, NOW_MS, placing, planned, profile, SPOT } from '../store/place.ts';
import { deskOf } from './club.ts';

/*
 * What everyone sees of a member's question is, letter by letter, what is answered to someone of whom nothing is kept.
 * So it can tell of nothing that is kept, by whatever way.
 */
const inUse = '100000000000000011';
/** Has tanks, none of which is in use. */
const inBetween = '100000000000000012';
const nobody = '100000000000000013';

type Values = Readonly<Record<string, unknown>>;

let store: Store;
let desk: Desk;

beforeAll(() => {
  store = openStore({ file: ':memory:', nowMs: () => NOW_MS });
  desk = deskOf(store, { commands, ask, nowMs: () => NOW_MS });
  moveIn(store.keepFor(inUse), 'Pantry');
  const between = store.keepFor(inBetween);
  const [first] = ['Inlet', 'Pantry', 'Tide pool'].map((name) => moveIn(between, name));
  between.removeTank(first ?? 0);
});

afterAll(() => store.close());

/** A tank with all that can hang on it. */
function moveIn(keep: Keep, name: string): number {
  const habits = { lightHours: 9.5, instrument: 'refractometer', startedOn: '2025-01-02' } as const;
  const units = { volume: 'US gal', alkalinity: 'meq/L', temperature: '°F' } as const;
  const { id } = keep.addTank(
    profile(name, { netVolumeL: 251.7, ...habits, units, targets: { alkalinity: [7.7, 8.7] } }),
  );
  keep.setZone('Asia/Tokyo');
  keep.setGlass(id, { box: { lengthCm: 121, widthCm: 51, heightCm: 49 } });
  for (let day = 0; day < 9; day += 1) {
    const atMs = NOW_MS - (9 - day) * 24 * HOUR_MS;
    keep.addEntry(id, alkalinity(8.3 - day / 10, -24 * (9 - day), 'a note'));
    keep.addEntry(id, {
      atMs,
      values: [
        { parameter: 'salinity', value: 33.3 },
        { parameter: 'temperature', value: 25.7 },
        { parameter: 'calcium', value: 417 - day },
        { parameter: 'nitrate', value: 13 },
      ],
    });
  }
  keep.addAddition(id, addition(0.5));
  keep.addCoral(id, placing({ label: 'old friend' }));
  keep.addCoral(id, placing({ coralId: 'hammer-coral-branching', spot: { ...SPOT, xCm: 30 } }));
  keep.addLightPoints(id, [{ spot: SPOT, ppfd: 137, atMs: NOW_MS }]);
  keep.addReminder(planned('clean the glass', { tankId: id }), { nextMs: NOW_MS + HOUR_MS });
  return id;
}

let talks = 0;

/** Outside of any talk: each in a channel of its own. */
function asks(personId: string, command: string, values: Values): Outcome {
  talks += 1;
  const channelId = `talk ${talks}`;
  const server = {
    id: '100000000000000900',
    channelId,
    settings: () => quietSettings,
    mayManage: false,
    change: () => {},
    mayWrite: () => true,
    lacks: () => [],
  };
  const place: PlaceHere = { channelId, server, isPublic: () => true, isThread: () => false };
  return run(desk, { personId, place, command, values, call: undefined });
}

/** Whether everyone saw it; then it was what is answered to nobody. */
function wasOpen(personId: string, command: string, values: Values): boolean {
  const { answer, hidden } = asks(personId, command, values);
  if (!hidden) expect(answer).toEqual(asks(nobody, command, values).answer);
  return !hidden;
}

const questions = [
  ...[cases, asked, askedOfGuide].flatMap((each) => Object.values(each)),
  'how much alk does my tank use a day',
  'how often should i test',
  'remind me to test alk every saturday 9am',
  'when do the clocks change',
  'what fits left back in my tank',
  'torch in the left back low ok?',
  'my torch is closed, what is wrong',
  'how is my alk',
].map((each) => (typeof each === 'string' ? each : each.asked));

/** Values as the examples of commands have them, by option. */
function examples(): ReadonlyMap<string, readonly unknown[]> {
  const found = new Map<string, unknown[]>([
    ['tank', ['Pantry', 'Tide pool']],
    ['at', ['left, back, low', '30 cm from the left, 10 cm from the front, 5 cm up']],
    ['coral', ['torch', 'zoas', '1', '2']],
  ]);
  for (const { example } of commands) {
    const line = readLine(example, commands);
    if (line.kind !== 'command') continue;
    for (const [name, value] of Object.entries(line.input)) {
      found.set(name, [...(found.get(name) ?? []), value]);
    }
  }
  return found;
}

/** A command that everyone may see the answer of, with some of its options given. */
function anyCall(): fc.Arbitrary<{ readonly command: string; readonly values: Values }> {
  const known = examples();
  const open = commands.filter((each) => !each.private && each.path.join(' ') !== 'tank share');
  return fc.constantFrom(...open).chain(({ path, options }) => {
    const command = path.join(' ');
    const given = optionsOf(options).map(({ name, choices = [] }) => [
      ...(known.get(name) ?? []),
      ...choices,
    ]);
    const picked = given.map((values) => fc.option(fc.constantFrom(...values, ''), { nil: undefined }));
    return fc.tuple(...picked).map((values) => ({
      command,
      values: Object.fromEntries(
        optionsOf(options).flatMap(({ name }, at) => (values[at] === undefined ? [] : [[name, values[at]]])),
      ),
    }));
  });
}

describe.each([
  ['a tank in use', inUse],
  ['tanks of which none is in use', inBetween],
])('what everyone sees of a member with %s', (_, personId) => {
  it('in plain words', () => {
    expect(store.keepFor(inBetween).tanks()).toHaveLength(2);
    const open = questions.filter((question) => wasOpen(personId, 'ask', { question }));
    expect(open.length > 0).toBe(personId === inBetween);
  });

  it('by any command, with any of its options left out', () => {
    let open = 0;
    const call = fc.property(anyCall(), ({ command, values }) => {
      if (wasOpen(personId, command, values)) open += 1;
    });
    fc.assert(call, { numRuns: 1500 });
    expect(open).toBeGreaterThan(150);
  });
});

it('is compared with an answer that would be another one', () => {
  expect(() => wasOpen(inUse, 'tank share', {})).toThrow('to deeply equal');
});
