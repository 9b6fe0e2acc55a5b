import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { evenDays, swapDays } from '../../../core/change/day-plan.ts';
import { freshTempC } from '../../../core/change/warmth.ts';
import { readSpot } from '../../../core/corals/spot.ts';
import { checkedTopOff } from '../../../core/dosing/limewater.ts';
import { peakFor } from '../../../core/light/daily.ts';
import { mixLuxPerPpfd } from '../../../core/light/lux.ts';
import { COLUMNS, readRows } from '../../../core/log/rows.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { readSize } from '../../../core/tank/size.ts';
import { waterDepth } from '../../../core/tank/volume.ts';
import { correctRefractometer } from '../../../core/water/refraction.ts';
import { possible } from '../../../core/water/possible.ts';
import { readSalinity } from '../../../core/water/salinity-reading.ts';
import { readMoment } from '../../../core/words/moment.ts';
import { readRepeats } from '../../../core/words/repeats.ts';
import { readWhen } from '../../../core/words/when.ts';
import { problemOf } from '../../bot/terminal/problem-of.ts';
import { inBrackets } from './bracketed.ts';

/** What is thrown to whoever runs the bot, at its start and beside it: in English, as the log is. */
const FOR_WHO_RUNS_IT: ReadonlySet<string> = new Set([
  'bot/config.ts',
  'bot/discord/refusal.ts',
  'bot/discord/register/register-cli.ts',
  'bot/store/explain.ts',
  'bot/store/restore.ts',
]);
const LITERAL = /new Problem\(\s*['"`]|\b(?:hint|limit): *(['"`])[^'"`]*[a-z]{2} [a-z]{2}/;

describe.each(['core', 'bot', 'commands'])('%s', (layer) => {
  const files = readdirSync(layer, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(layer, name))
    .filter((file) => !FOR_WHO_RUNS_IT.has(file));

  it('has no error whose sentence stands outside the catalogue', () => {
    expect(files.length).toBeGreaterThan(100);
    expect(files.filter((file) => LITERAL.test(readFileSync(file, 'utf8')))).toEqual([]);
  });
});

const field = 'x';
const nowMs = Date.UTC(2026, 0, 10, 12);
const context = { field, nowMs, zone: 'UTC' };
const box = { lengthCm: 60, widthCm: 40, heightCm: 40 };
const head = COLUMNS.join(',');

describe('an error', () => {
  it.each<readonly [string, () => unknown]>([
    ['⟦40 in which unit?⟧', () => readQuantity('volume', '40', { field })],
    ['⟦That is more than one length, and I need one.⟧', () => readQuantity('length', '3 x 4 cm', { field })],
    ['⟦I could not read that as a number with a unit.⟧', () => readQuantity('mass', 'heap', { field })],
    ['⟦I cannot read "1.2.3" as a number.⟧', () => readQuantity('mass', '1.2.3 g', { field })],
    ['⟦That is in the future.⟧', () => readWhen('2027-01-01', context)],
    ['⟦There is no such date or time.⟧', () => readWhen('2025-02-30', context)],
    ['⟦I need one moment for that.⟧', () => readMoment('every monday', context)],
    ['⟦That can mean two things. Which one?⟧', () => readRepeats('feed biweekly', context)],
    ['⟦What is to be done when, in that part?⟧', () => readRepeats('every monday', context)],
    ['⟦The first line of the file must name its columns.⟧', () => readRows('a,b', field, nowMs)],
    ['⟦The file has no readings.⟧', () => readRows(head, field, nowMs)],
    ['⟦Left, centre or right?⟧', () => readSpot('back, low', box)],
    ['⟦From the left, that is outside the tank.⟧', () => readSpot('90 cm from the left, back, low', box)],
    ['⟦The size of a box tank has 3 lengths.⟧', () => readSize('60 x 40 cm', 'box', field)],
    ['⟦The water line would be above the rim.⟧', () => waterDepth(40, 50)],
    [
      '⟦A specific gravity of a marine tank lies between 1.000 and 1.032.⟧',
      () => readSalinity('35 sg', { field }),
    ],
    ['⟦26 on which scale?⟧', () => readSalinity('26', { field })],
    [
      '⟦No tank holds that much calcium: look at the number and its unit.⟧',
      () => possible('calcium', field, 1e6),
    ],
    ["⟦That is no day's top-off: it is more than the whole tank.⟧", () => checkedTopOff(300, 100)],
    [
      '⟦The same daily light would need a peak of 0 PAR.⟧',
      () => peakFor(0.001, { fullHours: 8, rampHours: 0 }),
    ],
    ['⟦A mix needs at least one share above 0 and none below.⟧', () => mixLuxPerPpfd([])],
    ['⟦At that pace it would take 100 days.⟧', () => evenDays(36, 26, 0.1, 0.1)],
    ['⟦Water of that salinity cannot bring the tank there.⟧', () => swapDays(36, [35], 40)],
    [
      '⟦So little water cannot bring it there: it would have to be ice or steam.⟧',
      () => freshTempC(20, 40, 0.01),
    ],
    [
      '⟦The refractometer is too far from its standard to correct a reading by sums.⟧',
      () => correctRefractometer(35, { scale: 'ppt', standardReading: 10, standardTrue: 35 }),
    ],
  ])('is said in the language in force: %s', (message, run) => {
    const { message: said, limit = '', hint = '⟦⟧', choices } = inBrackets(() => problemOf(run));
    expect(said).toBe(message);
    expect(hint).toMatch(/^⟦.*⟧$/s);
    expect(/[a-z]{3} [a-z]{3}/.test(limit) && !limit.startsWith('⟦')).toBe(false);
    expect(choices.join(' ')).not.toContain('⟦');
  });

  it('tells of a line of a file in it too', () => {
    const { bad } = inBrackets(() => readRows(`${head}\n2030-01-01T00:00Z,calcium,420,mg/L,`, field, nowMs));
    expect(bad).toEqual([{ line: 2, why: '⟦the time is in the future⟧' }]);
  });
});

describe('a count', () => {
  it.each([
    [1, '1 cell instead of 5'],
    [4, '4 cells instead of 5'],
  ])('of %i has its plural', (count, why) => {
    const { bad } = readRows(`${head}\n${Array(count).fill('x').join(',')}`, field, nowMs);
    expect(bad.map((each) => each.why)).toEqual([why]);
  });
});
