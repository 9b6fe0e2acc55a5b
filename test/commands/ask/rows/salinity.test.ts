import { describe, expect, it } from 'vitest';
import { forecastRows } from '../../../../commands/ask/rows/forecast.ts';
import { guarded } from '../../../../commands/ask/rows/guarded.ts';
import { instrumentRows } from '../../../../commands/ask/rows/instruments.ts';
import { salinityRows } from '../../../../commands/ask/rows/salinity.ts';
import { answer } from '../../../../commands/answer.ts';
import type { Kind } from '../../../../core/language/kinds.ts';
import { frameOf } from './asked.ts';
import { answered, asked, number, textOf } from './asked-row.ts';

const rows = [...salinityRows, ...forecastRows, ...instrumentRows];
const salinity = (kind: Kind, text: string) => answered(rows, kind, text);

/** S 35 is 1.0264 on 25/25 (EOS-80, Fofonoff and Millard 1983) and 53.07 mS/cm at 25 °C (PSS-78). */
describe('salinity', () => {
  it('on every scale', () => {
    expect(salinity('salinity-convert', 'what is 1.0264 in ppt').headline).toContain('35 ppt');
    expect(salinity('salinity-convert', '53 mS/cm in ppt').headline).toContain('34.9 ppt');
  });

  it('up and down by days', () => {
    const given = salinity('salinity-adjust', 'tank reads 38 ppt, want 35, 200 L, how do I lower it');
    expect(given.headline).toContain('Over 3 days swap');
    expect(textOf(given)).toContain(`${(100 * (1 - 35 / 38)).toFixed(1)} %`);
  });

  it('takes no value it fell from for a goal', () => {
    const given = salinity('salinity-adjust', 'salinity fell from 1.026 to 1.023 in 300 L, what do i do');
    expect(textOf(given)).toContain('no goal given, so 35 ppt');
  });

  it('of a batch, and of one that came out weak', () => {
    expect(salinity('salinity-mix', 'how much salt for 60 L at 35 ppt').headline).toContain(
      'for 60 L at 35 ppt',
    );
    const given = salinity('salinity-mix', 'new batch in a 100 L barrel came out at 33 ppt, want 35');
    expect(number(given.headline, 'g of salt')).toBeCloseTo(200, 0);
  });

  it('of a litre, or by the label of the mix', () => {
    expect(salinity('salinity-mix', 'grams per litre for 1.025').headline).toContain('for 1 L at 33.2 ppt');
    expect(salinity('salinity-mix', 'how much salt for 60 L, label says 38 g per litre').headline).toContain(
      '2.28 kg',
    );
  });

  // 36 g in a litre read 32: 3 g more, 1 g per litre for each ppt (as above).
  it('of a litre that came out weak by its label', () => {
    const given = salinity(
      'salinity-mix',
      'mixed salt at 36 g per litre and the new batch reads 32, how come',
    );
    expect(given.headline).toContain('add about 3 g of salt mix');
  });

  it('raises with no water that is too weak for it', () => {
    const text = 'raise 30.2 ppt to 35 in 240 L with a fresh batch at 34';
    const given = salinity('salinity-adjust', text);
    expect(given.headline).toContain('for salt water of 40 ppt');
    expect(given.unused).toContain('34 (water of it would not bring the tank there)');
  });

  // 35 x 266 / 252 = 36.94; the water that went weighs less than sea water, so 36.9.
  it('once, without days', () => {
    const text = '14 l gone by evaporation, 35 before, 266 l, what does it read';
    expect(salinity('salinity-forecast', text).headline).toMatch(
      /^With nothing added it reads about 36\.9 ppt/,
    );
  });

  it('side by side', () => {
    const given = salinity('salinity-convert', '1.0264 and 36 ppt are they the same');
    expect(given.headline).toMatch(/1\.0264 SG is 35 ppt.* 36 ppt is 1\.0271 SG/);
  });

  // 35 x e^(-30 / 300) = 31.67; 35 + 35 x 10 / 200 = 36.75.
  it('falls by skimmate, and rises by salt water in the top-off', () => {
    const text = 'skimmer pulls 1 L a day of skimmate, 300 L, ato with ro, 35 ppt, after 30 days?';
    expect(number(salinity('salinity-forecast', text).headline, 'ppt')).toBeCloseTo(31.7, 1);
    const salt = 'topped off 10 L with salt water by mistake in 200 L tank at 35 ppt';
    expect(number(salinity('salinity-forecast', salt).headline.split('about')[1] ?? '', 'ppt')).toBeCloseTo(
      36.8,
      1,
    );
  });

  it('after evaporation: the salt stays', () => {
    const text = 'away 6 days with no ato, 100 L tank loses 1 L a day, 35 ppt now';
    expect(number(salinity('salinity-forecast', text).headline, 'ppt')).toBeCloseTo(35 / 0.94, 0);
  });

  it('after fresh water ran in: left alone', () => {
    expect(salinity('salinity-forecast', 'top off stuck, reads 1.024 now, was 1.025').headline).toMatch(
      /^Leave it/,
    );
  });

  it('asks what is missing', () => {
    expect(asked(rows, 'salinity-mix', 'how much salt do i need')).toContain('How much salt water');
    expect(asked(rows, 'salinity-forecast', 'away for 6 days, how salty will it get')).toContain(
      'evaporates',
    );
  });
});

describe('instruments', () => {
  it('that disagree: nothing is moved', () => {
    expect(salinity('kits-disagree', 'refractometer 1.026, hydrometer 1.023').headline).toContain(
      '4 ppt apart',
    );
    const kits = salinity('kits-disagree', 'one kit says alk 180 ppm, the other 240 ppm');
    expect(kits.headline).toContain('10.1 dKH');
    expect(kits.headline).toContain('Dose nothing');
    expect(textOf(salinity('kits-disagree', 'shop nitrate 10 mine 40 who lies'))).toContain('NO3-N');
  });

  it('of three, by the lowest and the highest', () => {
    const given = salinity('kits-disagree', 'three kits say nitrate 5, 10 and 20');
    expect(given.headline).toContain('5 mg/L; 20 mg/L');
    expect(given.read[0]).toContain('between them: 10');
  });

  it('in fresh water', () => {
    expect(salinity('instrument', 'refractometer shows 1.003 in RO water').headline).toMatch(
      /^It reads 0\.003 too high on fresh/,
    );
  });

  it('takes buffers of pH for no readings of the tank', () => {
    const text = 'ph probe shows 7.01 in the 7 buffer and 9.8 in the 10 buffer, tank 8.35, trust it?';
    expect(salinity('instrument', text).headline).not.toContain('apart');
  });

  // 1.0264 / 1.023 on the standard: 3.4 of 23 too low, 1.024 is then about 36.5 ppt (EOS-80, straight line).
  it('knows the gravity on the label of a standard', () => {
    const text = 'swing arm says 1.024 in my tank, the 1.026 standard reads 1.023 in the same swing arm';
    expect(salinity('instrument', text).headline).toMatch(/36\.\d ppt/);
  });

  it('that names its standard: 37 on the 35 fluid is 2 too high, and no reading of the tank', () => {
    expect(salinity('instrument', 'my refractometer reads 37 on the 35 calibration fluid').headline).toMatch(
      /^It reads 2 ppt too high on the 35 ppt standard/,
    );
  });

  it('without a number: the card of the instrument', () => {
    expect(salinity('instrument', 'can i trust my swing arm hydrometer').headline).toContain('35 ppt');
    expect(textOf(salinity('instrument', 'my ph probe was never calibrated, can i trust it'))).toContain(
      'pH',
    );
  });
});

describe('what is true of every answer', () => {
  const given = answer({ headline: 'Something else.' });

  it('says first that salinity is off', () => {
    const frame = frameOf('change-once', 'salinity is 38 ppt and nitrate 40, i change 20 %');
    expect(guarded(frame, given).headline).toMatch(/^Salinity 38 ppt is high/);
  });

  it('says so where readings should be kept, with the button that keeps them', () => {
    const kept = guarded(frameOf('readings-ok', 'please log alk 8.3'), given);
    expect(kept.headline).toMatch(/^Not logged yet/);
    expect(kept.next[0]).toMatchObject({ command: 'log add', input: { readings: 'alkalinity 8.3' } });
  });
});
