import { describe, expect, it } from 'vitest';
import { waterCommands } from '../../../commands/water.ts';
import { problemOf, runner, textOf } from '../text.ts';

const ask = runner(waterCommands);
const kits = (of: string, first: string, second: string) => ask('kits', { of, first, second });

// 50.04 mg CaCO3 and 2.804 dKH are 1 meq (IUPAC 2021): 180 ppm = 3.60 meq/L = 10.1 dKH, 240 ppm = 4.80 = 13.4,
// 8 dKH = 143 ppm. NO3/NO3-N = 4.427. What kits scatter is common practice, no source.
describe('/water kits', () => {
  it('180 and 240 ppm of alkalinity are 10.1 and 13.4 dKH, a third apart', () => {
    const given = kits('alkalinity', '180 ppm', '240 ppm');
    expect(given.headline).toMatch(/^The kits disagree: 10\.1 dKH; 13\.4 dKH, 33 % apart\. Dose nothing/);
    const text = textOf(given);
    expect(text).toMatch(/8 dKH would read: 143 ppm/);
    expect(text).toMatch(/Test a standard/);
    expect(text).not.toMatch(/180 dKH|mean is \d/);
  });

  it.each([
    ['alkalinity', '8 dKH', '8.8', /10 % apart, which is within what kits scatter/],
    ['calcium', '400', '440', /10 % apart, which is within/],
    ['ph', '8.0', '8.3', /^The kits disagree: 8; 8\.3, 0\.3 apart\. Change nothing/],
    // 79 °F = 26.1 °C.
    ['temperature', '25 C', '79 F', /79 °F = 26\.1 °C, 1\.1 °C apart\. Change nothing/],
  ])('%s %s and %s', (of, first, second, headline) =>
    expect(kits(of, first, second).headline).toMatch(headline),
  );

  it('sees one number in two units, and that neither needs anything today', () => {
    const text = textOf(kits('nitrate', '2.3', '10'));
    expect(text).toMatch(/one 4\.3 times the other/);
    expect(text).toMatch(/nitrogen \(NO3-N\) and nitrate/);
    expect(text).toMatch(/by either one: nitrate is where reefs are kept \(2 to 20 mg\/L\)/);
    // 2.3 mg/L NO3-N = 10.2 mg/L NO3.
    expect(kits('nitrate', '2.3 ppm NO3-N', '10 ppm').headline).toMatch(/= 10\.2 mg\/L; .* within what kits/);
  });

  it('doubts an instrument where animals could not look well, and sends to the card where they do not', () => {
    expect(kits('temperature', '25', '41').headline).toMatch(
      /^Look at the animals now\. If they are well, 41 °C cannot be true; if not, \/urgent what:overheating/,
    );
    expect(kits('ph', '6.2', '8.2').headline).toMatch(/If they are well, 6\.2 cannot be true/);
    // 31 °C can be: believed up to 35 °C.
    expect(kits('temperature', '25', '31').headline).toMatch(/act as if it were right/);
  });

  it('does not wait for the proof where one of them would be an emergency', () => {
    expect(kits('ammonia', '0', '0.5').headline).toMatch(/^One of the two would be urgent.*what:ammonia/);
    expect(kits('alkalinity', '9 dKH', '15 dKH').headline).toMatch(/^One of the two would be urgent/);
  });

  it('takes salinities, too', () =>
    expect(kits('salinity', '1.026', '1.023').headline).toMatch(/4 ppt apart, so at least one is wrong/));

  it.each([
    ['mood', '1', '2', 'of'],
    ['calcium', 'low', '400', 'first'],
    ['calcium', '400', '9000', 'second'],
  ])('asks about %s %s %s', (of, first, second, field) =>
    expect(problemOf(() => kits(of, first, second)).field).toBe(field),
  );
});
