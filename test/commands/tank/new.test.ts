import { describe, expect, it } from 'vitest';
import type { Keep } from '../../../commands/keep.ts';
import { problemOf, textOf } from '../text.ts';
import { as, twoMembers } from './member.ts';

function member(): { keep: Keep; run: ReturnType<typeof as> } {
  const [keep] = twoMembers();
  return { keep, run: as(keep) };
}

describe('/tank new, the water', () => {
  it('works it out from the inside and what stands in it: 276 - 10 - 18 + 60 = 308 L by hand', () => {
    const { keep, run } = member();
    const given = run(
      '/tank new name:Pantry size:120 x 50 x 50 cm measured:inside height:46 cm rock:24 kg sand:5 cm sump:60 L',
    );
    expect(given.headline).toBe(
      'Pantry is kept: 308 L of net water, the sump included; the display holds 300 L to the rim.',
    );
    expect(given.working).toContain('Net: 276 L − 10 L − 18 L + 60 L = 308 L');
    expect(given.facts).toContainEqual({ label: 'net water lies between', value: '305.6 L and 310.6 L' });
    expect(keep.tankInUse()).toMatchObject({
      name: 'Pantry',
      netVolumeL: 308,
      displayVolumeL: 300,
      volumeBasis:
        '120 x 50 x 50 cm inside, water 46 cm high, less rock 24 kg, less sand 5 cm, plus sump 60 L',
    });
  });

  it('takes the glass off an outside size: 117.6 x 47.6 x 48.8 cm = 273.2 L by hand', () => {
    const { run } = member();
    const given = run('/tank new name:A size:120 x 50 x 50 cm measured:outside glass:12 mm');
    expect(given.facts).toContainEqual({ label: 'display', value: '273.2 L to the rim' });
    expect(textOf(given)).toMatch(/No rock or sand is taken off, so this is the most/);
  });

  it('reads inches and shows gallons to who prefers them: 36 x 18 x 18 in = 50.49 US gal of 231 in3', () => {
    const { run } = member();
    const given = run('/tank new name:A size:36x18x18 in measured:inside height:18 in units:US gallons');
    expect(given.facts).toContainEqual({ label: 'net water', value: '50.49 US gal (191.1 L)' });
  });

  it('works the water back from a dose: 238.1 meq / 0.3923 meq/L = 606.9 L, with the range of the kit', () => {
    const { run } = member();
    const given = run('/tank new name:A dilution:20 g baking soda, 7.0 to 8.1 dKH');
    expect(given.headline).toMatch(/^A is kept: 606.9 L of net water/);
    expect(given.facts).toContainEqual({ label: 'net water lies between', value: '476.8 L and 834.4 L' });
    expect(textOf(given)).toMatch(/work out doses with its low end/);
    expect(textOf(given)).toMatch(/faster than usual/);
  });

  it.each([
    '20 g of baking soda raised alk from 2.5 to 2.9 meq/L',
    '20 g sodium bicarbonate: 7.0 -> 8.1 dKH',
    '0.02 kg baking soda, 7,0 dKH to 8,1 dKH',
    '20 g baking soda 7.0-8.1 dKH',
  ])('reads a dose written "%s"', (text) => {
    const { keep, run } = member();
    run(`/tank new name:A dilution:${text}`);
    expect(keep.tanks()[0]?.netVolumeL).toBeGreaterThan(590);
    expect(keep.tanks()[0]?.netVolumeL).toBeLessThan(610);
  });

  it('a dose whose salt is open offers each form, and each works', () => {
    const { run } = member();
    const { choices } = problemOf(() =>
      run('/tank new name:A dilution:30 g calcium chloride, ca 400 to 430'),
    );
    expect(choices).toHaveLength(3);
    for (const [index, choice] of choices.entries()) run(`/tank new name:A${index} dilution:${choice}`);
  });

  it.each([
    ['nothing about the water', 'name:A', 'volume'],
    ['rock without a size', 'name:A rock:20 kg', 'volume'],
    ['a size measured who knows where', 'name:A size:120 x 50 x 50 cm', 'measured'],
    ['an outside size without its glass', 'name:A size:120 x 50 x 50 cm measured:outside', 'glass'],
    ['750 L called, 160 x 80 x 55 cm = 704 L', 'name:A volume:750 L size:160 x 80 x 55 cm', 'volume'],
    ['rock off a net volume', 'name:A volume:240 L rock:20 kg', 'rock'],
    ['both a volume and a dose', 'name:A volume:240 L dilution:20 g baking soda, 7 to 8.1 dKH', 'dilution'],
    ['a shape without a size', 'name:A volume:240 L shape:cylinder', 'size'],
    ['a volume without a unit', 'name:A volume:240', 'volume'],
    ['a sump that is all the water', 'name:A volume:60 L sump:80 L', 'sump'],
    ['water above the rim', 'name:A size:60 x 40 x 40 cm measured:inside height:45 cm', 'height'],
    ['a rise within the kit’s error', 'name:A dilution:20 g baking soda, 7.0 to 7.2 dKH', 'dilution'],
    ['a product as a measure', 'name:A dilution:20 ml magic drops, 7.0 to 8 dKH', 'dilution'],
    ['an empty name', 'name:--- volume:240 L', 'name'],
  ])('asks back for %s and keeps nothing', (_, options, field) => {
    const { keep, run } = member();
    expect(problemOf(() => run(`/tank new ${options}`)).field).toBe(field);
    expect(keep.tanks()).toEqual([]);
  });

  it('750 L fit in 704 L of glass with a sump of 120 L beside it', () => {
    const { keep, run } = member();
    run('/tank new name:A volume:750 L size:160 x 80 x 55 cm sump:120 L');
    expect(keep.tanks()[0]).toMatchObject({ netVolumeL: 750, displayVolumeL: 704 });
  });

  it('doubts a volume that is less than half of the glass', () => {
    const given = member().run('/tank new name:A volume:75 L size:120 x 50 x 50 cm measured:inside');
    expect(textOf(given)).toMatch(/less than half of what the glass holds/);
  });

  it('a bare volume takes the unit chosen for this tank, then that of the tank in use', () => {
    const { keep, run } = member();
    run('/tank new name:A volume:75 units:US gallons');
    run('/tank new name:B volume:75');
    run('/tank new name:C volume:75 units:litres');
    expect(keep.tanks().map(({ netVolumeL }) => Math.round(netVolumeL))).toEqual([284, 284, 75]);
  });
});

describe('/tank new, the rest', () => {
  it('refuses a name the member has, in any case', () => {
    const { run } = member();
    run('/tank new name:Pantry volume:240 L');
    expect(problemOf(() => run('/tank new name:PANTRY volume:10 L')).field).toBe('name');
  });

  it('stops at 20 tanks', () => {
    const { keep, run } = member();
    for (let i = 1; i <= 20; i += 1) run(`/tank new name:T${i} volume:${i}0 L`);
    expect(problemOf(() => run('/tank new name:T21 volume:10 L')).message).toMatch(/20 tanks/);
    expect(keep.tanks()).toHaveLength(20);
  });

  it('keeps what is given', () => {
    const { keep, run } = member();
    run(
      '/tank new name:Pantry volume:240 L kind:small-polyp started:3 Jan 2025 instrument:refractometer hours:9,5 alkalinity:meq/L temperature:fahrenheit units:imperial gallons targets:alk 2.5-3',
    );
    expect(keep.tanks()[0]).toMatchObject({
      kind: 'small-polyp',
      startedOn: '2025-01-03',
      instrument: 'refractometer',
      lightHours: 9.5,
      units: { volume: 'imp gal', alkalinity: 'meq/L', temperature: '°F' },
      targets: { alkalinity: [expect.closeTo(7.01, 2), expect.closeTo(8.41, 2)] },
    });
  });
});
