import { describe, expect, it } from 'vitest';
import { callId } from '../../../bot/discord/asked/call.ts';
import { coralCommands } from '../../../commands/coral.ts';
import { MOST_CORALS } from '../../../commands/placed.ts';
import { problemOf, textOf } from '../text.ts';
import { NOW_MS, run, twoPersons } from './person.ts';
import { inputOf } from '../../action.ts';

/** The gaps and ranges are those of the guide (common practice, no source, where not said); scenes are invented. */
const placingNames = ['add', 'check', 'move', 'list', 'remove'];

it('keeps all that is about a member to themselves', () => {
  const placing = coralCommands.filter(({ path }) => placingNames.includes(path[1] ?? ''));
  expect(placing.map((command) => command.private)).toEqual(placingNames.map(() => true));
});

describe('/coral add', () => {
  it('places and says settled, with what the light is not known to be', () => {
    const [{ keep, say }] = twoPersons();
    const given = say(
      '/coral add coral:torch at:left, back, middle rock size:12 cm origin:wild since:3 days ago',
    );
    expect(given.headline).toBe('Torch coral is coral 1 of Pantry: settled.');
    expect(keep.corals(1)).toEqual([
      {
        id: 1,
        coralId: 'torch-coral',
        label: undefined,
        spot: { xCm: 20, yCm: (5 / 6) * 50, zCm: 23 },
        rough: true,
        diameterCm: 12,
        origin: 'wild',
        since: '2026-05-02',
      },
    ]);
    const text = textOf(given);
    expect(text).toMatch(/light here is not known/);
    expect(text).toMatch(/Settled means that no rule here objects/);
    expect(text).not.toMatch(/guess from the volume/);
  });

  it('says move with the gap, the basis and the smallest cure, and offers spots that are better', () => {
    const [{ keep, say }] = twoPersons();
    say('/coral add coral:torch at:20 x 30 x 20 cm size:10 cm');
    const given = say('/coral add coral:branching hammer at:40 x 30 x 20 cm size:8 cm');
    expect(given.headline).toBe('Branching hammer coral is coral 2 of Pantry: move (sting).');
    const [sting] = given.facts;
    // Two round bodies, middles 20 cm apart, 5 and 4 cm to their edges: 11 cm; torch beside hammer wants 20.
    expect(sting?.value).toMatch(/stand 11 cm apart/);
    expect(given.working.join('\n')).toMatch(/stand 11 cm apart.*keep 20 cm \(common practice\)/);
    expect(sting?.verdict).toBe('move');
    expect(given.steps[0]).toBe(
      'Branching hammer coral and Torch coral: 9 cm further apart: at least to 20 cm.',
    );
    expect(given.working.join()).toMatch(/sting rests on: common practice/);
    const better = given.next.filter(({ command }) => command === 'coral move');
    expect(better).toHaveLength(3);
    for (const { command, input } of better) {
      expect(callId({ command, input })).toBeDefined();
      expect(run(keep, command, input).headline).not.toMatch(/: move/);
    }
  });

  it('counts the reach for more on the side the water goes to', () => {
    const [{ say }] = twoPersons();
    say('/tank edit flow:left to right');
    say('/coral add coral:torch at:20 x 30 x 20 cm size:10 cm');
    const headline = (at: string) =>
      say(`/coral add coral:duncan at:${at} size:6 cm`).headline.replace(/^.*: /, '');
    expect([headline('53 x 30 x 20 cm'), headline('20 x 4 x 43 cm')]).toEqual(['watch (sting).', 'settled.']);
  });

  it('judges a new wild piece by its start value, once there is a reading', () => {
    const [{ keep, say }] = twoPersons();
    keep.addLightPoints(1, [{ spot: { xCm: 60, yCm: 25, zCm: 30 }, ppfd: 190, atMs: NOW_MS }]);
    const add = (more: string) => say(`/coral add coral:torch at:60 x 25 x 30 cm size:8 cm ${more}`).headline;
    expect(add('since:today origin:wild')).toMatch(/move \(.*light/);
    say('/coral remove coral:1 sure:yes');
    expect(add('since:2025-01-03 origin:tank-grown')).toMatch(/: settled\.$/);
  });

  it('puts palytoxin before everything where zoanthids come in', () => {
    const [{ say }] = twoPersons();
    const given = say('/coral add coral:zoas at:right, front, low size:4 cm');
    expect(given.dangers[0]).toMatch(/^Zoas: May hold palytoxin\. Wear gloves and eye protection/);
    expect(say('/coral check').dangers[0]).toMatch(/palytoxin/);
  });

  it('offers what a name can mean, and guesses none', () => {
    const [{ keep, say }] = twoPersons();
    const problem = problemOf(() => say('/coral add coral:hammer at:left, back, low size:8 cm'));
    expect(problem.field).toBe('coral');
    expect(problem.choices).toEqual(['Branching hammer coral', 'Wall hammer coral']);
    for (const choice of problem.choices)
      expect(say(`/coral add coral:${choice} at:left, back, low size:8 cm`).headline).toContain(choice);
    expect(keep.corals(1)).toHaveLength(2);
    expect(problemOf(() => say('/coral add coral:goldfish at:left, back, low size:8 cm')).message).toBe(
      'I do not know that coral.',
    );
  });

  it('says how a misspelt or an older name was read', () => {
    const [{ say }] = twoPersons();
    expect(say('/coral add coral:hydnofora at:right, back, low size:5 cm').read[0]).toMatch(
      /"hydnofora" read as .*Hydnophora/,
    );
  });

  it.each([
    ['size', 'at:left, back, low size:4', /centimetres, inches or heads/],
    ['size', 'at:left, back, low size:4 m', /size/],
    ['at', 'at:left size:4 cm', /Front, middle or back/],
    ['at', 'at:130 x 10 x 10 cm size:4 cm', /outside the tank/],
    ['since', 'at:left, back, low size:4 cm since:tomorrow', /day/],
  ])('asks when %s is wrong (%s)', (field, more, message) => {
    const [{ keep, say }] = twoPersons();
    const problem = problemOf(() => say(`/coral add coral:torch ${more}`));
    expect([problem.field, problem.message]).toEqual([field, expect.stringMatching(message)]);
    expect(keep.corals(1)).toEqual([]);
  });

  it('says that the glass is a guess where only the volume is known', () => {
    const [{ say }] = twoPersons();
    say('/tank new name:Nano volume:250 L');
    const text = textOf(say('/coral add coral:torch at:left, back, low size:3 heads tank:Nano'));
    // Twice as long as deep and high: 100 x 50 x 50 cm is 250 L.
    expect(text).toMatch(/100 x 50 x 50 cm to the water line is a guess from the volume/);
    // Three heads of 7 cm side by side in a round: 7 x sqrt 3 = 12.12, rounded up so that they have their place.
    expect(text).toMatch(/3 heads, taken as about 12\.2 cm wide/);
  });

  it('tells two of one name apart, and keeps the own name', () => {
    const [{ say }] = twoPersons();
    for (const at of ['20 x 20 x 20 cm', '40 x 20 x 20 cm']) say(`/coral add coral:torch at:${at} size:8 cm`);
    say('/coral add coral:torch at:100 x 20 x 20 cm size:8 cm label:Old gold');
    expect(textOf(say('/coral check'))).toMatch(/Torch coral \(1\), Torch coral \(2\), Old gold/);
    expect(say('/coral check coral:old gold').headline).toMatch(/^Old gold \(coral 3 of Pantry\)/);
    expect(problemOf(() => say('/coral check coral:torch coral')).choices).toEqual([
      '1: Torch coral',
      '2: Torch coral',
    ]);
  });

  it('stops at the most a tank may have', () => {
    const [{ keep, say }] = twoPersons();
    const spot = { xCm: 1, yCm: 1, zCm: 1 };
    for (let i = 0; i < MOST_CORALS; i++)
      keep.addCoral(1, { coralId: 'zoanthus', spot, rough: false, diameterCm: 1, origin: 'unknown' });
    expect(problemOf(() => say('/coral add coral:torch at:left, back, low size:8 cm')).field).toBe('coral');
  });
});

describe('a coral that is placed', () => {
  it('moves and grows, and says where it was', () => {
    const [{ keep, say }] = twoPersons();
    say('/coral add coral:torch at:left, back, low size:8 cm');
    const moved = say('/coral move coral:torch at:60 x 20 x 10 cm size:4 in');
    expect(moved.headline).toMatch(/^Torch coral \(coral 1 of Pantry\) is moved: settled/);
    expect(moved.read[0]).toMatch(/^before: left, back, low/);
    expect(keep.corals(1)[0]).toMatchObject({
      spot: { xCm: 60, yCm: 20, zCm: 10 },
      rough: false,
      diameterCm: 10.16,
    });
    expect(say('/coral move coral:1 size:12 cm').headline).toMatch(/is changed/);
    expect(keep.corals(1)[0]).toMatchObject({ spot: { xCm: 60, yCm: 20, zCm: 10 }, diameterCm: 12 });
    expect(problemOf(() => say('/coral move coral:1')).field).toBe('at');
  });

  it('is removed only when asked twice', () => {
    const [{ keep, say }] = twoPersons();
    say('/coral add coral:torch at:left, back, low size:8 cm');
    const asked = say('/coral remove coral:torch');
    expect(asked.headline).toMatch(/Nothing is removed yet/);
    expect(keep.corals(1)).toHaveLength(1);
    const [yes] = asked.next;
    expect(run(keep, yes?.command ?? '', yes?.input ?? {}).headline).toBe(
      '1: Torch coral is removed from Pantry.',
    );
    expect(keep.corals(1)).toEqual([]);
  });

  it("of another does not exist, and neither does another's tank", () => {
    const [ada, bea] = twoPersons();
    ada.say('/coral add coral:torch at:left, back, low size:8 cm');
    for (const line of [
      '/coral move coral:1 at:left, front, low',
      '/coral remove coral:1 sure:yes',
      '/coral check coral:1',
    ]) {
      const [theirs, none] = [line, line.replace('coral:1', 'coral:999')].map((typed) =>
        problemOf(() => bea.say(typed)),
      );
      expect(theirs?.message).toBe('That is not one of the corals in Pantry.');
      expect([theirs?.message, theirs?.choices]).toEqual([none?.message, none?.choices]);
    }
    expect(ada.keep.corals(1)).toHaveLength(1);
    expect(problemOf(() => bea.say('/coral list tank:Adas')).message).toMatch(/You have no tank called/);
  });
});

function reef() {
  const [{ say, keep }] = twoPersons();
  say('/coral add coral:torch at:20 x 30 x 20 cm size:10 cm');
  say('/coral add coral:branching hammer at:36 x 30 x 20 cm size:8 cm');
  say('/coral add coral:fungia at:100 x 25 x 20 cm size:9 cm');
  say('/coral add coral:zoas at:70 x 5 x 10 cm size:4 cm');
  return { say, keep };
}

describe('/coral check and list', () => {
  it('counts verdicts, puts the worst first and offers better spots for those at risk', () => {
    const { say } = reef();
    const given = say('/coral check');
    expect(given.headline).toBe('Pantry: 3 to move, 1 settled.');
    expect(given.facts.slice(0, 2).map(({ label, verdict }) => [label, verdict])).toEqual([
      ['sting', 'move'],
      ['sand or rock', 'move'],
    ]);
    expect(given.facts.find(({ label }) => label === 'no rule objects to')?.value).toBe('Zoas');
    expect(given.steps).toContain(
      'Plate coral: Down to open sand, loose, with gentle flow and 15 cm free on all sides. No glue.',
    );
    expect(
      given.next.filter(({ command }) => command === 'coral check').map((action) => inputOf(action)['coral']),
    ).toEqual(['2', '3']);
  });

  // Hydnophora is kept 15 cm from everything (common practice, no source).
  it('names the one coral that is the cause, first', () => {
    const [{ say }] = twoPersons();
    say('/coral add coral:hydnophora at:60 x 30 x 20 cm size:6 cm');
    for (const at of ['50 x 30 x 20 cm', '70 x 30 x 20 cm', '60 x 42 x 20 cm'])
      say(`/coral add coral:favites at:${at} size:5 cm`);
    const given = say('/coral check');
    expect(given.steps[0]).toMatch(/^Begin with the fewest moves: Hydnophora \(part of 3\)/);
    expect(given.next[0]).toMatchObject({ label: 'Better spots for Hydnophora', input: { coral: '1' } });
  });

  // Soft beside stony 10 cm (Griffith 1997); the reach of the torch asks for as much.
  it('asks once for the gap of a pair, with the carbon', () => {
    const [{ say }] = twoPersons();
    say('/coral add coral:torch at:60 x 30 x 20 cm size:10 cm');
    const { steps } = say('/coral add coral:toadstool at:75 x 30 x 20 cm size:10 cm');
    const apart = steps.filter((step) => /further apart/.test(step));
    expect(apart).toEqual([expect.stringMatching(/5 cm further apart: at least to 10 cm\.$/)]);
    expect(steps.filter((step) => /carbon/.test(step))).toEqual([
      'Run activated carbon and change it often.',
    ]);
    expect(steps.join(' ')).not.toMatch(/Leave more room now/);
  });

  it('lists each with its spot and its verdict', () => {
    const { say } = reef();
    expect(say('/coral list').table?.rows.map((row) => [row[0], row[1], row[2], row.at(-1)])).toEqual([
      ['1', 'Torch coral', '20 x 30 x 20 cm', 'move'],
      ['2', 'Branching hammer coral', '36 x 30 x 20 cm', 'move'],
      ['3', 'Plate coral', '100 x 25 x 20 cm', 'move'],
      ['4', 'Zoas', '70 x 5 x 10 cm', 'settled'],
    ]);
  });

  it('have something to say of an empty tank', () => {
    const [{ say }] = twoPersons();
    expect(say('/coral check').headline).toMatch(/nothing to check/);
    expect(say('/coral list').headline).toMatch(/no corals here yet/);
  });
});
