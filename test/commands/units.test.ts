import { describe, expect, it } from 'vitest';
import { convertCommand } from '../../commands/convert.ts';
import { editCommand } from '../../commands/tank/edit.ts';
import { unitsCommand } from '../../commands/units.ts';
import { amountCommand } from '../../commands/dose/amount.ts';
import { factOf, member } from './log/member.ts';

describe('/units', () => {
  it('keeps what is chosen, the rest stays, and tells what holds', () => {
    const { keep, run } = member();
    run(unitsCommand, { volume: 'US gallons', length: 'inches' });
    const answer = run(unitsCommand, { temperature: 'fahrenheit' });
    expect(keep.units()).toEqual({ volume: 'US gal', length: 'in', temperature: '°F' });
    expect(answer.facts.map(({ value }) => value)).toEqual(['US gal', 'in', '°F']);
  });

  it('changes nothing when it only tells', () => {
    const { keep, run } = member();
    expect(run(unitsCommand).facts).toEqual([]);
    expect(keep.units()).toEqual({});
  });

  it('says where the tank in use has units of its own, which win', () => {
    const { run } = member();
    run(unitsCommand, { length: 'inches' });
    run(editCommand, { length: 'cm' });
    const answer = run(unitsCommand);
    expect(factOf(answer, 'lengths')).toBe('cm');
    expect(answer.read.join()).toMatch(/Reef has units of its own/);
  });

  it('reads a bare number so', () => {
    const { keep, run } = member();
    keep.removeTank(keep.tanks()[0]?.id ?? 0);
    run(unitsCommand, { volume: 'US gallons' });
    const answer = run(amountCommand, {
      of: 'calcium',
      now: '400',
      goal: '420',
      with: 'calcium chloride dihydrate',
      volume: '75',
    });
    expect(answer.read.join()).toMatch(/75 read in your preferred unit, US gal/);
    expect(answer.headline).toMatch(/283\.9 L/);
  });
});

it('/convert tells both', () => {
  const { run } = member();
  run(unitsCommand, { volume: 'US gallons' });
  expect(run(convertCommand, { amount: '75 gal' }).headline).toMatch(/75 US gal is 283\.9 L/);
});
