import { describe, expect, it } from 'vitest';
import { forecastRows } from '../../../../commands/ask/rows/forecast.ts';
import { guarded } from '../../../../commands/ask/rows/guarded.ts';
import { instrumentRows } from '../../../../commands/ask/rows/instruments.ts';
import { salinityRows } from '../../../../commands/ask/rows/salinity.ts';
import { answer } from '../../../../commands/answer.ts';
import type { Kind } from '../../../../core/language/kinds.ts';
import { answered, asked, frameOf, number, textOf } from './asked-row.ts';

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
    expect(given.headline).toContain(`${(100 * (1 - 35 / 38)).toFixed(1)} %`);
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
