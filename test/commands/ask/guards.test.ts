import { describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import { compoundsFor } from '../../../core/dosing/compound.ts';
import { NOW_MS, twoPersons } from '../coral/person.ts';
import { textOf } from '../text.ts';

const answered = (text: string) => ask(text, { nowMs: 0 });

function isFirst(text: string): void {
  const { headline, facts } = answered(text);
  const [first] = facts;
  expect(`${headline}; ${first?.label} ${first?.value}`).toMatch(/alinity [^;]*\b(?:low|high)\b/);
}

function isOfOther(text: string): void {
  expect(answered(text).headline).not.toMatch(/^Salinity 1\.021/);
}

// 1.021 on 25/25 is S 27.9 (EOS-80); 33 to 36 usual: common practice, no source.
describe('salinity out of bounds is in the first line, or the first fact', () => {
  it.each([
    'raise calcium 380 to 420, salinity 1.021, 75 gal',
    'is 1.021 ok',
    'salinity 1.021',
    '1.021 want 1.026 in 50 gal',
    'sg 1.030, alk 9, want 9.5 with baking soda 40 gal',
    '38.5 ppt salinity, nitrate 40 want 10, 20% a week',
  ])('%s', isFirst);

  // Known miss: 1200 is taken for a salinity too; the emergency itself is answered.
  it.fails.each(['alk 8.2 ca 390 mg 1200 sg 1.021'])('%s', isFirst);

  it.each(['refractometer shows 1.021 on the 35 ppt standard'])('not of other water: %s', isOfOther);

  // Known miss: the new mix is taken for the tank.
  it.fails.each(['my new mix is 1.021 and alk 8.1 ca 420, ok?'])('not of other water: %s', isOfOther);
});

describe('what is wished lower is never raised', () => {
  const salts = [...compoundsFor('nitrate'), ...compoundsFor('phosphate')].map(({ name }) => name);

  it.each([
    'no3 50 po4 0.4, what can I add to bring them down?',
    'nitrate 0.5 and phosphate 0.12 too high?? what do i dose to lower them',
    'nitrates 100 ppm and phosphate 1.0 ppm, get both down, what should i add',
    'po4 0.40 no3 40 need to reduce both, dose what',
  ])('%s', (text) => {
    const said = textOf(answered(text)).toLowerCase();
    for (const salt of salts) expect(said).not.toContain(salt);
  });
});

describe('nothing is called fine that was not all used', () => {
  it.each([
    'alk 8.3 ca 420 mg 1350 but my torch keeps closing',
    'alk 8.3 ca 420 and zeta 77',
    'ph 8.2 alk 9 ca 430 fish are gasping though',
    'kh 8 ca 430 mg 1300 no3 5, corals look bad',
  ])('%s', (text) =>
    expect(textOf(answered(text))).not.toMatch(/nothing to do but|all of it is|No dose needed/i),
  );

  it('is so where all was used', () =>
    expect(answered('alk 8.3 ca 420 mg 1350 no3 5').headline).toMatch(/^All of it is in the usual range/));
});

describe('what shall be kept is kept, or it is said why not', () => {
  it.each([
    ['log alk 8.3', { alkalinity: 8.3 }],
    ['please write down kh 7.9 and mag 1290', { alkalinity: 7.9, magnesium: 1290 }],
    ['note: ca 430 mg 1350 alk 8', { calcium: 430, magnesium: 1350, alkalinity: 8 }],
    ['save alk 8.1 ca 430', { alkalinity: 8.1, calcium: 430 }],
  ])('%s', (text, values) => {
    const elsewhere = answered(text);
    expect(elsewhere.headline).toContain('nothing of yours is shown or changed');
    expect(elsewhere.next[0]?.command).toBe('log add');
    const [{ keep }] = twoPersons();
    ask(text, { nowMs: NOW_MS, keep, zone: 'UTC' });
    const kept = keep.latest(keep.tankInUse()?.id ?? expect.unreachable());
    expect(Object.fromEntries(kept.map(({ parameter, value }) => [parameter, value]))).toEqual(values);
  });
});
