import { beforeEach, describe, expect, it } from 'vitest';
import { openTalks } from '../../../bot/talks.ts';
import { openStore } from '../../../bot/store/open.ts';
import type { Answer } from '../../../commands/answer.ts';
import { keptCoral } from '../../../commands/ask/kept-coral.ts';
import { keptSlots } from '../../../commands/ask/kept-slots.ts';
import { ask } from '../../../commands/ask.ts';
import type { Keep, Tank } from '../../../commands/keep.ts';
import { inputOf } from '../../action.ts';
import { problemOf } from '../text.ts';
import { plain, scriptedReader, type Scripted } from '../../scripted-reader.ts';

const DAY_MS = 86_400_000;
const NOW_MS = Date.UTC(2026, 4, 5, 12);

const profile = { kind: 'mixed', volumeBasis: 'counted', units: {}, targets: {} } as const;

let keep: Keep;
let tank: Tank;
let talkOf: ReturnType<typeof openTalks>['talkOf'];

beforeEach(() => {
  keep = openStore({ file: ':memory:', nowMs: () => NOW_MS }).keepFor('100000000000000001');
  tank = keep.addTank({ ...profile, name: 'Pantry', netVolumeL: 250 });
  ({ talkOf } = openTalks(() => NOW_MS));
});

function log(parameter: 'alkalinity' | 'ammonia' | 'calcium', value: number, daysAgo: number): void {
  keep.addEntry(tank.id, { atMs: NOW_MS - daysAgo * DAY_MS, values: [{ parameter, value }] });
}

/** Asks these one after another in one place; the last answer. */
function asks(...messages: readonly Scripted[]): Answer {
  const reader = scriptedReader(messages);
  const answers = messages.map(({ marked }) =>
    ask(plain(marked), { nowMs: NOW_MS, keep, reader, talk: talkOf('me', ['here']) }),
  );
  return answers.at(-1) ?? expect.unreachable();
}

const amount = (marked: string): Scripted => ({ marked, kinds: [['dose-amount', 0.9]] });
const commandsOf = ({ next }: Answer): readonly string[] => next.map(({ command }) => command);

describe('what is kept of a tank', () => {
  it('is its net water, its corals, and readings of the last 14 days with their day', () => {
    log('alkalinity', 7.4, 13);
    log('calcium', 410, 15);
    keep.addCoral(tank.id, {
      coralId: 'torch-coral',
      label: 'Sunny',
      spot: { xCm: 20, yCm: 20, zCm: 10 },
      rough: false,
      diameterCm: 10,
      origin: 'tank-grown',
    });
    expect(keptSlots(keep, NOW_MS)).toEqual({
      volume: '250.0000 L',
      levels: [{ of: 'alkalinity', part: 'now', text: '7.4000 dKH', value: 7.4, moment: '2026-04-22' }],
      corals: ['Sunny'],
    });
  });

  it('is nothing without a tank in use', () => {
    keep.removeTank(tank.id);
    expect(keptSlots(keep, NOW_MS)).toEqual({});
  });
});

/** 1 dKH in 100 L = 1.890 g Na2CO3 (IUPAC 2021). */
describe('what a message leaves out', () => {
  const wish = amount('alk to [8.4](wanted alkalinity) with soda ash');

  it('is filled from the log and the tank, and the answer says from which day', () => {
    log('alkalinity', 7.4, 3);
    const { headline, read } = asks(wish);
    expect(Number(/([\d.]+) g of sodium carbonate/.exec(headline)?.[1])).toBeCloseTo(1 * 2.5 * 1.89, 1);
    expect(read).toContain('last alkalinity logged for your tank Pantry: 7.4 dKH on 2026-05-02');
    expect(read).toContain('net water of your tank Pantry: 250 L');
  });

  it('is not filled against what was said, now or before', () => {
    log('alkalinity', 7.4, 3);
    const said = asks(amount('raise alk [7.9](now alkalinity) to [8.4](wanted alkalinity) with soda ash'));
    expect(said.read.join()).not.toContain('7.4');
    const later = asks(
      amount('alk is [7.9](now alkalinity), raise it to [8.2](wanted alkalinity) with soda ash'),
      wish,
    );
    expect(later.read.join()).toContain('with what you said before: alkalinity 7.9');
    expect(later.read.join()).not.toContain('2026-05-02');
  });

  it('is not filled from a reading that is too old, nor for other water', () => {
    const isAsked = 'What does alkalinity read now?';
    log('alkalinity', 7.4, 15);
    expect(problemOf(() => asks(wish)).message).toBe(isAsked);
    log('alkalinity', 7.4, 1);
    const other = amount('[40 gal](system), alk to [8.4](wanted alkalinity) with soda ash');
    expect(problemOf(() => asks(other)).message).toBe(isAsked);
  });

  it('is filled for the tank that is named, not for the one in use', () => {
    const nano = keep.addTank({ ...profile, name: 'Nano', netVolumeL: 40 });
    log('alkalinity', 7.4, 3);
    keep.addEntry(nano.id, { atMs: NOW_MS, values: [{ parameter: 'alkalinity', value: 7.9 }] });
    const first = asks(wish, amount('nano: alk to [8.4](wanted alkalinity) with soda ash'));
    expect(first.read).toContain('last alkalinity logged for your tank Nano: 7.9 dKH on 2026-05-05');
    expect(first.headline).toContain('40 L');
    expect(JSON.stringify(first)).not.toMatch(/Pantry|250 L/);
    expect(first.read).toContain('taken as a new subject');
  });
});

describe("somebody else's tank", () => {
  const theirs = amount(
    "my friend's alk to [8.4](wanted alkalinity) with soda ash, from [6](now alkalinity)",
  );

  it('is filled from nothing of the member, and says so', () => {
    const { read, headline } = asks(
      amount('[75 gal](system), alk [7.2](now alkalinity) to [8](wanted alkalinity) with soda ash'),
      theirs,
    );
    expect(read).toContain('taken as somebody else\u2019s tank: nothing of yours is used');
    expect(`${headline} ${read.join()}`).not.toMatch(/75 gal|250 L|Pantry|7\.2/);
    expect(headline).toContain('per 100 L');
  });

  it('adds nothing to what is known of the own, though it is gone on with', () => {
    const more = amount('and in [20 gal](system)?');
    expect(asks(theirs, more).headline).toContain('in 75.7 L');
    const own = asks(
      theirs,
      more,
      amount('raise my alk from [7](now alkalinity) to [8.6](wanted alkalinity) with soda ash'),
    );
    expect(`${own.headline} ${own.read.join()}`).not.toMatch(/20 gal|from 6 |alkalinity 6/);
    expect(own.headline).toContain('250 L');
  });
});

describe('a reading in the log that cannot wait', () => {
  it('is brought up in one line beside any answer about the tank, and only there', () => {
    log('ammonia', 0.5, 1);
    const line = 'Urgent in the log of Pantry: ammonia 0.5 mg/L on 2026-05-04.';
    const dose = amount('alk [7.2](now alkalinity) to [8.4](wanted alkalinity) with soda ash');
    const given = asks(dose);
    expect(given.dangers).toContain(line);
    expect(commandsOf(given)).toContain('checkup');
    const elsewhere = [
      amount('[20 gal](system), alk [7.2](now alkalinity) to [8.4](wanted alkalinity) with soda ash'),
      amount("my friend's alk [7.2](now alkalinity) to [8.4](wanted alkalinity) with soda ash"),
    ];
    for (const each of elsewhere) expect(asks(each).dangers.join()).not.toContain('Urgent in the log');
  });
});

describe('a coral that is named', () => {
  it('comes with its own spot, origin, age, light and neighbours', () => {
    const spot = { xCm: 20, yCm: 20, zCm: 10 };
    const rest = { rough: false, diameterCm: 10, origin: 'wild', since: '2026-04-05' } as const;
    keep.addCoral(tank.id, { coralId: 'torch-coral', label: 'Sunny', spot, ...rest });
    keep.addCoral(tank.id, {
      coralId: 'hammer-coral-branching',
      spot: { ...spot, xCm: 50 },
      ...rest,
    });
    keep.addLightPoints(tank.id, [{ spot, ppfd: 140, atMs: NOW_MS }]);
    const found = keptCoral('torch', { keep, tank, nowMs: NOW_MS });
    expect(found?.light).toBe('140 PAR');
    expect(found?.read).toMatch(
      /^your Sunny \(coral 1 of Pantry\): .*wild; 30 days here; 140 PAR, measured here/,
    );
    expect(found?.read).toMatch(/20 cm away$/);
    expect(keptCoral('sunny', { keep, tank, nowMs: NOW_MS })?.id).toBe(1);
    expect(keptCoral('zoanthid', { keep, tank, nowMs: NOW_MS })).toBeUndefined();
  });
});

const besides = (text: string) =>
  asks(amount(`${text}. alk [7](now alkalinity) to [8](wanted alkalinity)`)).next;

describe('an event told in passing', () => {
  const torch = {
    coralId: 'torch-coral',
    spot: { xCm: 20, yCm: 20, zCm: 10 },
    rough: false,
    diameterCm: 10,
    origin: 'unknown',
  } as const;
  it.each([
    ['my torch died', 'coral remove', { coral: '1' }],
    ['i moved my torch yesterday', 'coral move', { coral: '1' }],
    ['just got a hammer', 'coral add', { coral: 'hammer' }],
  ])('%s: a button for /%s', (text, command, input) => {
    keep.addCoral(tank.id, torch);
    const offer = besides(text).find((one) => one.command === command) ?? expect.unreachable();
    expect(inputOf(offer)).toMatchObject(input);
  });

  it.each([
    'none of my torch died',
    'has my torch died?',
    'is my torch dying',
    'my hammer died',
    'a fish died',
  ])('no button: %s', (text) => {
    keep.addCoral(tank.id, torch);
    expect(besides(text).filter(({ command }) => command.startsWith('coral'))).toEqual([]);
  });

  it('a dose that went in by accident can be logged', () => {
    const accident: Scripted = {
      marked: 'oops, [20 g](amount substance) of soda ash went in',
      kinds: [
        ['overdose', 0.7],
        ['dose-effect', 0.2],
      ],
    };
    const offer = asks(accident).next.find(({ command }) => command === 'log dose');
    expect(offer && inputOf(offer)).toEqual({ with: 'soda ash', amount: '20 g', tank: 'Pantry' });
  });
});
