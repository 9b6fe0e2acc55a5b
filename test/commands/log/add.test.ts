import { describe, expect, it } from 'vitest';
import { addCommand } from '../../../commands/log/add.ts';
import { problemOf, textOf } from '../text.ts';
import { DAY_MS, factOf, member, START_MS } from './member.ts';

describe('/log add', () => {
  it('logs a line and says that all is well', () => {
    const { run, keep, tank } = member();
    const answer = run(addCommand, { readings: 'alk 8.1 ca 420', note: 'before lights on' });
    expect(answer.headline).toBe(
      'Logged for Reef: alkalinity 8.1 dKH, calcium 420 mg/L. All of it is where it should be.',
    );
    expect(answer.steps).toEqual([]);
    expect(answer.read[0]).toBe('Reef, tested at 2026-01-03 12:00 (times by the clock of America/Chicago)');
    expect(keep.readings(tank.id, {})).toEqual([
      { parameter: 'alkalinity', value: 8.1, atMs: START_MS, note: 'before lights on' },
      { parameter: 'calcium', value: 420, atMs: START_MS, note: 'before lights on' },
    ]);
    expect(answer.next.map(({ command, input }) => ({ command, input }))).toEqual([
      { command: 'log undo', input: { tank: 'Reef' } },
      { command: 'checkup', input: { tank: 'Reef' } },
    ]);
  });

  it('says what changed since the last time, by when it was tested', () => {
    const { run, wait } = member();
    run(addCommand, { readings: 'kh 9.3' });
    wait(2);
    const answer = run(addCommand, { readings: 'kh 7.5' });
    expect(answer.headline).toContain('alkalinity 7.5 dKH (−1.8 dKH)');
    expect(factOf(answer, 'alkalinity')).toBe('7.5 dKH, −1.8 dKH in 2 days (usual 7 to 11 dKH) fine');
    expect(factOf(run(addCommand, { readings: 'kh 9', at: '1 day ago' }), 'alkalinity')).toContain(
      '−0.3 dKH in 24 hours, within the test’s error',
    );
  });

  // 1 dKH a day at most: common practice, no source.
  it('warns of a change faster than the usual pace, and not of two tests of one hour', () => {
    const { run, wait } = member();
    run(addCommand, { readings: 'kh 8' });
    wait(1);
    const fast = run(addCommand, { readings: 'kh 9.8' });
    expect(fast.headline).toContain('That moved faster than usual.');
    expect(fast.steps[0]).toMatch(
      /^alkalinity rose by 1.8 dKH in 24 hours \(from 8 dKH\): more than the usual 1 dKH a day\.$/,
    );
    expect(fast.steps[1]).toMatch(/^Test again/);
    expect(fast.steps[2]).toBe('I only see what is logged.');
    const calm = member();
    calm.run(addCommand, { readings: 'kh 8' });
    calm.wait(1 / 24);
    expect(textOf(calm.run(addCommand, { readings: 'kh 8.4' }))).not.toMatch(/faster/);
  });

  it('judges by the tank’s own targets first, then by its kind', () => {
    const own = member({ kind: 'small-polyp', targets: { alkalinity: [8, 8.5] } });
    const answer = own.run(addCommand, { readings: 'kh 7.5 no3 12' });
    expect(factOf(answer, 'alkalinity')).toContain('(your aim 8 to 8.5 dKH) low');
    expect(factOf(answer, 'nitrate')).toContain('(usual 2 to 10 mg/L) high');
    expect(answer.headline).toContain('Worth a look: alkalinity low, nitrate high.');
  });

  it('puts ammonia first', () => {
    const answer = member().run(addCommand, { readings: 'ca 380 amm 0.5 kh 6' });
    expect(answer.headline).toMatch(/Urgent: ammonia 0.5 mg\/L\.$/);
    expect(answer.steps[0]).toMatch(/^ammonia 0.5 mg\/L: test again now/);
    expect(factOf(answer, 'ammonia')).toContain('(usual none) urgent');
  });

  it('logs what is hard to believe, and flags it', () => {
    const { run, keep, tank } = member();
    const answer = run(addCommand, { readings: 'ca 560' });
    expect(answer.headline).toContain('Test calcium again: it is hard to believe.');
    expect(keep.latest(tank.id)[0]?.value).toBe(560);
  });

  it('names what it did not read', () => {
    const answer = member().run(addCommand, { readings: 'kh 8.2 boron 4' });
    expect(answer.unused).toEqual(['"boron 4"']);
  });

  it('reads and prints in the preferred units', () => {
    const { run } = member({ units: { alkalinity: 'meq/L', temperature: '°F' } });
    const answer = run(addCommand, { readings: 'alk 3.2 temp 78' });
    expect(answer.headline).toContain('alkalinity 3.2 meq/L, temperature 78 °F');
    expect(answer.read).toContain('3.2 read in your preferred unit, meq/L');
  });

  it('logs nothing where it has to ask or finds nothing', () => {
    const { run, keep, tank } = member();
    expect(problemOf(() => run(addCommand, { readings: 'kh 8.2', at: 'tomorrow' })).field).toBe('at');
    expect(problemOf(() => run(addCommand, { readings: 'alk 3.2 ca 420' })).choices).toEqual([
      'alk 3.2 dKH, ca 420',
      'alk 3.2 meq/L, ca 420',
    ]);
    expect(problemOf(() => run(addCommand, { readings: 'all good today' })).field).toBe('readings');
    expect(problemOf(() => run(addCommand, { readings: 'kh 8', tank: 'Nano' })).choices).toEqual(['Reef']);
    expect(keep.readings(tank.id, {})).toEqual([]);
  });

  it('keeps one member’s readings from another', () => {
    const { run, other } = member();
    run(addCommand, { readings: 'kh 8' });
    const theirs = { nowMs: START_MS + DAY_MS, keep: other };
    expect(problemOf(() => addCommand.run({ readings: 'kh 9', tank: 'Reef' }, theirs)).field).toBe('tank');
    expect(problemOf(() => addCommand.run({ readings: 'kh 9' }, { nowMs: START_MS })).field).toBe('tank');
  });
});
