import { describe, expect, it } from 'vitest';
import { problemOf, textOf } from '../text.ts';
import { as, twoMembers } from './member.ts';

function pantry() {
  const [keep] = twoMembers();
  const run = as(keep);
  run(
    '/tank new name:Pantry size:120 x 50 x 50 cm measured:inside height:46 cm kind:soft started:2025-01-03 hours:9 targets:ca 420-440',
  );
  const tank = () => keep.tanks()[0];
  return { keep, run, tank };
}

describe('/tank edit', () => {
  it('changes only what is given', () => {
    const { run, tank } = pantry();
    const before = tank();
    run('/tank edit hours:10 h');
    expect(tank()).toEqual({ ...before, lightHours: 10 });
    run('/tank edit name:Pool kind:mixed');
    expect(tank()).toEqual({ ...before, lightHours: 10, name: 'Pool', kind: 'mixed' });
  });

  it('a new volume leaves the display, and says what the water was before', () => {
    const { run, tank } = pantry();
    const given = run('/tank edit volume:230 L');
    expect(tank()).toMatchObject({ netVolumeL: 230, displayVolumeL: 300 });
    expect(given.facts).toContainEqual({ label: 'net water before', value: '276 L' });
  });

  it('more water than the display holds is said to need a sump', () => {
    const { run } = pantry();
    expect(textOf(run('/tank edit volume:340 L'))).toMatch(/only with a sump/);
  });

  it('a bare volume takes the unit of the tank that is edited, not of the one in use', () => {
    const { keep, run } = pantry();
    run('/tank new name:Nano volume:20 units:US gallons');
    run('/tank edit units:litres');
    run('/tank edit tank:nano volume:10');
    expect(keep.tanks()[1]?.netVolumeL).toBeCloseTo(37.85, 2);
  });

  it('adds, replaces and takes back targets', () => {
    const { run, tank } = pantry();
    run('/tank edit targets:alk 8-9, mg 1300-1400');
    expect(tank()?.targets).toEqual({ calcium: [420, 440], alkalinity: [8, 9], magnesium: [1300, 1400] });
    run('/tank edit targets:calcium default; alk: 7.5 to 8.5');
    expect(tank()?.targets).toEqual({ alkalinity: [7.5, 8.5], magnesium: [1300, 1400] });
  });

  it.each([
    ['nothing', '', 'name'],
    ['rock without a size to take it from', 'rock:20 kg', 'volume'],
    ['a shape without a size', 'shape:cylinder', 'size'],
  ])('asks back for %s', (_, options, field) => {
    const { run, tank } = pantry();
    const before = tank();
    expect(problemOf(() => run(`/tank edit ${options}`.trim())).field).toBe(field);
    expect(tank()).toEqual(before);
  });

  it('refuses the name of another tank, but not its own in another case', () => {
    const { run, tank } = pantry();
    run('/tank new name:Nano volume:40 L');
    expect(problemOf(() => run('/tank edit name:nano')).field).toBe('name');
    run('/tank edit name:PANTRY');
    expect(tank()?.name).toBe('PANTRY');
  });
});

describe('/tank show', () => {
  it('says display against net, how it is known, age and whose each target is', () => {
    const { run } = pantry();
    const given = run('/tank show');
    expect(given.headline).toBe('Pantry: 276 L of net water; the display holds 300 L to the rim.');
    expect(given.facts).toContainEqual({ label: 'running', value: '1 year 4 months, since 2025-01-03' });
    expect(given.facts).toContainEqual({
      label: 'how the water is known',
      value: '120 x 50 x 50 cm inside, water 46 cm high',
    });
    expect(given.table?.rows).toContainEqual(['calcium', '420 to 440 mg/L', 'own']);
    expect(given.table?.rows).toContainEqual(['nitrate', '2 to 30 mg/L', 'usual']);
    expect(given.read.join(' ')).toMatch(/common practice: soft corals bear more nutrients/);
  });
});

describe('/tank list, use and remove', () => {
  it('lists, changes the tank in use, and removes only when sure', () => {
    const { keep, run } = pantry();
    const offered = run('/tank new name:Nano volume:40 L').next.map(({ label }) => label);
    expect(offered).toEqual(['show Nano', 'use Nano']);
    expect(run('/tank list').headline).toBe('You have 2 tanks here; Pantry is in use.');
    expect(run('/tank use tank:nano').headline).toMatch(/^Nano is now in use/);
    expect(keep.tankInUse()?.name).toBe('Nano');
    const asked = run('/tank remove tank:NANO');
    expect(keep.tanks()).toHaveLength(2);
    expect(asked.next).toEqual([
      { label: 'yes, remove Nano', command: 'tank remove', input: { tank: 'Nano', sure: 'yes' } },
    ]);
    run('/tank remove tank:Nano sure:yes');
    expect(run('/tank list').headline).toBe('You have one tank here; Pantry is in use.');
    expect(problemOf(() => run('/tank show tank:Nano')).choices).toEqual(['Pantry']);
  });
});
