import { describe, expect, it } from 'vitest';
import { dose, fact, problem, words } from './run.ts';

describe('/dose use', () => {
  it('9.3 to 7.5 dKH in 2 days is 0.9 dKH a day as a range, and what replaces it in 150 gal', () => {
    const answer = dose('use', { of: 'kh', before: '9.3', now: '7.5', over: '2 days', volume: '150g' });
    expect(answer.headline).toContain('about 0.9 dKH of alkalinity a day (0.75 to 1.05 dKH a day');
    expect(fact(answer, 'sodium bicarbonate a day')).toBe('15.3 g in 567.8 L');
    expect(fact(answer, 'Calcium used with it')).toContain('6.4 mg/L');
    expect(answer.steps[0]).toContain('never stop dosing');
  });

  it('counts what was dosed, in all or by the day', () => {
    const input = {
      of: 'kh',
      before: '8.3',
      now: '8.2',
      over: '4 days',
      with: 'baking soda',
      volume: '200 L',
    };
    const all = dose('use', { ...input, amount: '20 g' });
    expect(all.headline).toContain('0.86 dKH');
    expect(dose('use', { ...input, amount: '5 g a day' }).headline).toBe(all.headline);
  });

  it('takes a rise as what was dosed', () => {
    expect(
      dose('use', { of: 'kh', before: '8', now: '8', over: '2 days', amount: '0.6 dKH/day' }).headline,
    ).toContain('about 0.6 dKH');
  });

  it('says when the change is within the kit’s error, and changes no dose', () => {
    const answer = dose('use', { of: 'kh', before: '8.3', now: '8.2', over: '2 days' });
    expect(answer.headline).toMatch(/within the kit’s error/);
    expect(words(answer)).not.toMatch(/ a day: [\d.]+ g/);
  });

  it('finds a rise that dosing does not explain', () => {
    expect(dose('use', { of: 'ca', before: '400', now: '440', over: '2 days' }).headline).toMatch(
      /rose by 20 mg\/L a day \(15 to 25\) more than was added/,
    );
  });

  it('doubts an impossible reading', () => {
    expect(dose('use', { of: 'ca', before: '900', now: '440', over: '2 days' }).headline).toMatch(
      /^Retest first/,
    );
  });

  it.each([
    {
      input: { of: 'kh', before: '9', now: '8', over: '2 days', amount: '20 g', with: 'soda ash' },
      field: 'volume',
    },
    {
      input: {
        of: 'ca',
        before: '400',
        now: '390',
        over: '2 days',
        amount: '20 g',
        with: 'calcium chloride',
        volume: '100 L',
      },
      field: 'with',
    },
    { input: { of: 'kh', before: '9', now: '8', over: '0 days' }, field: 'over' },
  ])('asks about $field', ({ input, field }) => {
    expect(problem('use', input).field).toBe(field);
  });
});
