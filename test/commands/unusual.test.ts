import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commands, findCommand } from '../../commands/index.ts';
import type { Answer } from '../../commands/answer.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';

const run = (name: string, input: Readonly<Record<string, string>>): Answer =>
  (findCommand(name.split(' ')) ?? expect.unreachable(name)).run(input, { nowMs: 0 });

/** Anything that could be acted on: grams, millilitres, litres, days. */
const PLAN = /\d (?:k?g|m?L|US gal|days?)\b/;

// Usual ranges: common practice, no source (limits.ts).
describe('towards an unusual level nothing is worked out before one yes', () => {
  it.each([
    ['dose amount', { of: 'alkalinity', now: '8 dKH', goal: '13 dKH', with: 'soda ash', volume: '75 gal' }],
    ['dose amount', { of: 'calcium', now: '420', goal: '500', with: 'calcium chloride dihydrate' }],
    ['dose amount', { of: 'magnesium', goal: '+300', with: 'magnesium chloride hexahydrate' }],
    ['waterchange once', { of: 'nitrate', now: '20', goal: '1', volume: '100 L' }],
    ['waterchange once', { of: 'alkalinity', now: '8 dKH', fresh: '14 dKH', share: '80 %' }],
    ['waterchange goal', { of: 'phosphate', now: '0.1', goal: '0.01', share: '20 %' }],
    ['salinity adjust', { now: '35 ppt', goal: '1.019', volume: '100 L' }],
    ['salinity mix', { goal: '25 ppt', volume: '20 L' }],
    ['salinity batch', { now: '35 ppt', goal: '25 ppt', volume: '20 L' }],
  ])('%s %o', (name, input) => {
    const asked = run(name, input);
    expect(asked.headline).toMatch(/(?:below|above) the usual .* Is that what you meant\?$/);
    expect([asked.headline, ...asked.steps, ...asked.facts.map(({ value }) => value)].join(' ')).not.toMatch(
      PLAN,
    );
    const yes = asked.next.at(-1);
    expect(yes?.input).toMatchObject({ sure: 'yes' });
    const done = run(yes?.command ?? '', yes?.input ?? {});
    expect(done.headline).toMatch(PLAN);
    expect([done.headline, done.facts[0]?.value].join(' ')).toMatch(/(?:below|above) the usual/);
  });

  // 1.021 on 25/25 is S 27.9 (EOS-80); 420 x 35 / 27.9 = 527 mg/L at S 35 (constant composition, Millero et al. 2008).
  it('judges an ion by what it is at salinity 35', () => {
    const input = {
      of: 'calcium',
      now: '380',
      goal: '420',
      with: 'calcium chloride dihydrate',
      salinity: '1.021',
    };
    const asked = run('dose amount', { ...input, volume: '180 L' });
    expect([asked.headline, asked.facts[0]?.value].join(' ')).toMatch(
      /far too low.* 420 mg\/L \(527 mg\/L at salinity 35\) is above the usual calcium/,
    );
    expect(asked.next.map(({ label }) => label)).toEqual(['Yes, work it out']);
    expect(run('dose amount', { ...input, salinity: '35 ppt' }).headline).toMatch(/^\d+(?:\.\d+)? g of/);
  });

  it('works out a goal nearer to the usual range at once, and says that it is not there yet', () => {
    const given = run('waterchange once', { of: 'nitrate', now: '80', goal: '60', volume: '100 L' });
    expect(given.headline).toMatch(/^60 mg\/L is still above the usual nitrate .* One change of 25 %/);
  });

  it('offers a usual goal that is worked out at once', () => {
    const asked = run('salinity adjust', { now: '35 ppt', goal: '1.019', volume: '100 L' });
    const instead = asked.next[0] ?? expect.unreachable();
    expect(run(instead.command, instead.input).headline).not.toMatch(/what you meant/);
  });

  it('asks for every parameter and goal beyond, and never inside', () => {
    const ids = ['alkalinity', 'calcium', 'magnesium', 'potassium', 'nitrate', 'phosphate'] as const;
    const salts: Readonly<Record<(typeof ids)[number], string>> = {
      alkalinity: 'sodium bicarbonate',
      calcium: 'calcium chloride dihydrate',
      magnesium: 'magnesium chloride hexahydrate',
      potassium: 'potassium chloride',
      nitrate: 'sodium nitrate',
      phosphate: 'monosodium phosphate',
    };
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...ids), share, share, (id, a, b) => {
        const { usual, believable } = limitsOf(id);
        const now = usual[0] + (usual[1] - usual[0]) * Math.min(a, b);
        const beyond = usual[1] + (believable[1] - usual[1]) * Math.max(a, b);
        const inside = usual[0] + (usual[1] - usual[0]) * Math.max(a, b);
        const goal = (to: number): Answer =>
          run('dose amount', { of: id, now: text(id, now), goal: text(id, to), with: salts[id] });
        expect(goal(beyond).headline).toMatch(/Is that what you meant\?$/);
        expect(goal(inside).headline).not.toMatch(/what you meant/);
      }),
      { numRuns: 2000 },
    );
  });

  it('is an option of every command with a goal that moves water', () => {
    const planning = commands.filter(({ path: [first, second = ''] }) =>
      [
        'dose amount',
        'waterchange once',
        'waterchange goal',
        'water warm',
        'salinity adjust',
        'salinity mix',
        'salinity batch',
      ].includes(`${first} ${second}`),
    );
    expect(planning).toHaveLength(7);
    for (const { options } of planning) expect(Object.keys(options.shape)).toContain('sure');
  });
});

function text(id: ParameterId, value: number): string {
  return `${value.toFixed(6)} ${parameter(id).unit}`;
}
