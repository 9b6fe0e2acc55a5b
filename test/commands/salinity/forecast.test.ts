import { describe, expect, it } from 'vitest';
import { salinityCommands } from '../../../commands/salinity.ts';
import { problemOf, runner, textOf } from '../text.ts';

const ask = runner(salinityCommands);
const forecast = (input: Record<string, string>) => ask('forecast', input);

/**
 * The salt stays. 400 L at S 35 weigh 409.34 kg (EOS-80, 25 °C); 16 L of fresh water 15.95 kg: 35 x 409.34 / 393.38 = 36.42.
 * Salt water of 35 on top: 35 + 35 x 7 % = 37.45. 1.025 on 25/25 is 33.19; 1 of 75 gal is 1.333 %, four days 5.333 %:
 * 33.19 / (1 - 0.05333 x 0.9755) = 35.01.
 */
describe('/salinity forecast', () => {
  it.each([
    [
      { now: '35 ppt', volume: '400 L', evaporation: '4 L a day', days: '4 days' },
      /^After 4 days with nothing added it reads about 36\.4 ppt/,
    ],
    [{ now: '35 ppt', volume: '400 L', evaporation: '16 L', days: '4 days' }, /about 36\.4 ppt/],
    [
      { now: '1.025', volume: '75 gal', evaporation: '1 gal a day', days: '4 days', 'top-off': 'none' },
      /about 35 ppt \(1\.0264 SG\), up from 33\.2 ppt/,
    ],
    [
      { now: '35 ppt', evaporation: '1 % a day', 'top-off': '35 ppt' },
      /^After 7 days with salt water of 35 ppt it reads about 37\.5 ppt/,
    ],
    [{ now: '35 ppt', evaporation: '7 % a week', 'top-off': 'fresh' }, /^It stays at 35 ppt/],
    // (1 - 35/42) / 0.9743 / 0.02 = 8.55 days.
    [
      { now: '35 ppt', evaporation: '2 % a day', days: '30' },
      /^Not for so long: .* passes 42 ppt.* after about 8\.6 days/,
    ],
  ])('%o', (input, headline) => expect(forecast(input).headline).toMatch(headline));

  it('says when it leaves the usual range, and that fresh water goes in', () => {
    const text = textOf(forecast({ now: '35 ppt', evaporation: '1 % a day', 'top-off': '35 ppt' }));
    // 2 / 0.35 and 6 / 0.35 days.
    expect(text).toMatch(/leaves the usual range, at 37 ppt: after about 5\.7 days/);
    expect(text).toMatch(/urgent, at 41 ppt: after about 17\.1 days/);
    expect(text).toMatch(/is high; 33 to 36 ppt is usual/);
    expect(text).toMatch(/Top off with fresh \(RO\) water/);
    expect(text).toMatch(/Salt water goes in only where salt water came out/);
  });

  it('begins with a salinity that is off already, and warns of a quick rise', () => {
    expect(forecast({ now: '1.018', evaporation: '1 % a day' }).headline).toMatch(
      /^Salinity 1\.018 SG .* far too low/,
    );
    expect(textOf(forecast({ now: '35 ppt', evaporation: '3 % a day', days: '2' }))).toMatch(
      /faster rise than the usual 0\.66 ppt/,
    );
    expect(textOf(forecast({ now: '35 ppt', evaporation: '1 % a day', days: '2' }))).not.toMatch(
      /faster rise/,
    );
  });

  it.each([
    [{ evaporation: '1 % a day' }, 'now'],
    [{ now: '35 ppt', evaporation: '2 L a day' }, 'volume'],
    [{ now: '35 ppt', evaporation: '50 % a day' }, 'evaporation'],
    [{ now: '35 ppt', evaporation: '0 % a day' }, 'evaporation'],
    [{ now: '35 ppt', evaporation: '1 % a day', 'top-off': 'beer' }, 'top-off'],
    [{ now: '35 ppt', evaporation: '1 % a day', days: '3 years' }, 'days'],
  ])('asks about %o', (input, field) => expect(problemOf(() => forecast(input)).field).toBe(field));
});
