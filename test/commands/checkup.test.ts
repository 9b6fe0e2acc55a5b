import { describe, expect, it } from 'vitest';
import { checkupCommand } from '../../commands/checkup.ts';
import { addCommand } from '../../commands/log/add.ts';
import { asked } from '../corpus.ts';
import { factOf, member } from './log/member.ts';
import { problemOf, textOf } from './text.ts';

/** How often alkalinity is to be tested in such a tank. */
function often(changes: Parameters<typeof member>[0]): string | undefined {
  const { table } = member(changes).run(checkupCommand, { readings: 'kh 8', plan: true });
  return table?.rows.find(([test]) => test === 'alkalinity')?.[1];
}

const alone = (readings: string) => checkupCommand.run({ readings }, { nowMs: 0 });

// SG 1.024 at 25/25 is S 31.87 (EOS-80); 560 x 35 / 31.87 = 615 (constant composition); 80 °F = 26.67 °C.
describe('/checkup of a pasted line', () => {
  it('needs no tank: a good line calls for nothing', () => {
    const answer = alone('450/9.5/1350 sg 1.025 78f no3 8 po4 .06');
    expect(answer.headline).toBe(
      'All of it is in the usual range. No dose needed: nothing to do but keep it there.',
    );
    expect(answer.steps).toEqual([]);
    expect(answer.next).toEqual([]);
  });

  it('doubts first, then salinity, then the rest in order', () => {
    const answer = alone(asked.G03);
    expect(answer.headline).toMatch(
      /^Test calcium again first: 560 mg\/L is hard to believe\. Dose nothing.* salinity 31\.9 ppt is off, too\.$/,
    );
    expect(factOf(answer, 'calcium')).toBe(
      '560 mg/L, 615 mg/L at salinity 35 (usual 400 to 450 mg/L) doubtful',
    );
    expect(answer.steps.map((step) => step.split(' ').slice(0, 3).join(' '))).toEqual([
      'Retest calcium with',
      'calcium 560 mg/L',
      'salinity 31.9 ppt',
      'Raise it slowly,',
      'It moves calcium',
      'Fresh water that',
      'Keep the top-off',
      'nitrate 0 mg/L',
      'Retest, and feed',
      'phosphate 0 mg/L',
      'Retest, and feed',
      'One thing at',
    ]);
    expect(answer.read).toContain('1.024 is a specific gravity, not ppt; read it so');
    expect(textOf(answer)).not.toMatch(/dose alk/i);
  });

  it('lets salinity explain the ions it moves: 385 at S 31.87 is 423 at 35', () => {
    const answer = alone('sg 1.024 ca 385 mg 1180 kh 8');
    expect(answer.headline).toBe('Worth a look: salinity low. The rest is in the usual range.');
    expect(factOf(answer, 'calcium')).toContain('423 mg/L at salinity 35');
    expect(answer.working[0]).toContain('x 35 / 31.9');
  });

  it('asks for salinity where it would explain a low ion', () => {
    expect(alone('ca 380 kh 8').steps).toContainEqual(
      expect.stringMatching(/^Measure salinity before you act on calcium/),
    );
  });

  it('calls ammonia urgent before anything else, with no medicine', () => {
    const answer = alone('ca 700 amm 1 ph 8.4 sg 1.030');
    expect(answer.headline).toBe(
      'Urgent: ammonia 1 mg/L is too high. Confirm it with a second test now, and act today. And salinity 39.8 ppt is off, too.',
    );
    expect(answer.steps[0]).toMatch(/^ammonia 1 mg\/L: test again now/);
    expect(answer.steps[1]).toMatch(/stop feeding/);
    expect(textOf(answer)).toMatch(/a vet/);
    expect(textOf(answer)).not.toMatch(/\d+ ?m[lg] of/i);
  });

  it.each([
    ['ph 7.6 kh 8', /^pH 7.6: look at the hour first.*Do not chase it with chemicals/],
    ['29.5c kh 8', /^temperature 29.5 °C is above 27 °C: .*oxygen/],
    ['no2 2 kh 8', /^nitrite 2 mg\/L is above 0.1 mg\/L: test ammonia too/],
    ['kh 12', /^alkalinity 12 dKH.*: retest.*Never acid/],
    ['sg 1.029', /Lower it slowly, at most 1\.33 ppt/],
    ['salinity 3 ppt', /^salinity 3 ppt: test again now/],
  ])('%s', (line, step) => expect(alone(line).steps.join(' ')).toMatch(step));

  it('names what it did not read, and asks where there is nothing', () => {
    expect(alone('kh 8 boron 4').unused).toEqual(['"boron 4"']);
    expect(problemOf(() => alone('hello')).field).toBe('readings');
    expect(problemOf(() => checkupCommand.run({}, { nowMs: 0 })).field).toBe('readings');
  });

  it('is for the asker alone', () => expect(checkupCommand.private).toBe(true));
});

describe('/checkup of a tank', () => {
  it('judges the last logged values by the tank’s own targets, with their age', () => {
    const { run, wait } = member({ targets: { alkalinity: [8, 9] } });
    run(addCommand, { readings: 'kh 8.5 ca 420 sg 1.025' });
    wait(3);
    run(addCommand, { readings: 'kh 7.8' });
    wait(1);
    const answer = run(checkupCommand);
    expect(answer.headline).toBe(
      'Worth a look: alkalinity low, salinity at the edge. The rest is where it should be.',
    );
    expect(factOf(answer, 'alkalinity')).toBe('7.8 dKH (your aim 8 to 9 dKH) low');
    expect(answer.read).toContain('alkalinity 7.8 dKH of 2026-01-06 12:00, 24 hours old');
    expect(answer.read).toContain('calcium 420 mg/L of 2026-01-03 12:00, 4 days old');
  });

  // SG 1.025 at 25/25 is S 33.19 (EOS-80); stony corals 34 to 36 (common practice, no source).
  it('does not ask to act on a salinity the instrument may have wrong, and says so', () => {
    const answer = member().run(checkupCommand, { readings: 'sg 1.025 kh 8' });
    expect(answer.headline).toBe('Nothing to act on: salinity at the edge. The rest is where it should be.');
    expect(factOf(answer, 'salinity')).toBe('33.2 ppt (usual 34 to 36 ppt) at the edge');
    expect(answer.steps).toEqual([]);
    expect(answer.cautions[0]).toMatch(
      /no more than the instrument can be off: check it on a 35 ppt standard/,
    );
    expect(member({ kind: 'soft' }).run(checkupCommand, { readings: 'sg 1.025 kh 8' }).headline).toMatch(
      /^All of it/,
    );
    const logged = member().run(addCommand, { readings: 'sg 1.025 kh 8' });
    expect(logged.headline).toMatch(/All of it is where it should be\.$/);
    expect(factOf(logged, 'salinity')).toMatch(/ at the edge$/);
  });

  it('names readings older than 30 days and does not judge them', () => {
    const { run, wait } = member();
    run(addCommand, { readings: 'ca 300 kh 5.5' });
    wait(31);
    expect(run(checkupCommand).headline).toBe('There is no reading of the last days to judge for Reef.');
    run(addCommand, { readings: 'kh 8' });
    const answer = run(checkupCommand);
    expect(answer.headline).toMatch(/^All of it is where it should be/);
    expect(answer.read).toContain('not judged, too old: calcium 300 mg/L of 2026-01-03 12:00, 31 days old');
    expect(answer.steps).toEqual(['Test again, the last reading is more than 30 days old: calcium.']);
  });

  it('judges a pasted line by the tank in use and offers to log it', () => {
    const { run, keep, tank } = member({ kind: 'small-polyp' });
    const answer = run(checkupCommand, { readings: 'kh 10' });
    expect(answer.headline).toBe('Worth a look: alkalinity high.');
    expect(answer.next).toEqual([
      { label: 'log these', command: 'log add', input: { readings: 'kh 10', tank: 'Reef' } },
    ]);
    expect(keep.readings(tank.id, {})).toEqual([]);
  });

  it('shows how often to test what when asked, by the kind and age of the tank', () => {
    expect(often({})).toMatch(/^twice a week/);
    expect(often({ kind: 'soft' })).toBe('every 1 to 2 weeks');
    expect(often({ startedOn: '2025-12-01' })).toBe('weekly once corals are in');
    expect(often({ startedOn: '2024-12-01' })).toMatch(/^twice a week/);
    expect(member().run(checkupCommand, { readings: 'kh 8' }).table).toBeUndefined();
  });
});
