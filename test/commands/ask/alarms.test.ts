import { describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import { urgentCard, urgentCards, urgentIds } from '../../../core/care/urgent/cards.ts';
import { alarms, calm } from '../../cases/alarms.ts';
import { rendered } from '../coral/rendered.ts';

const told = (question: string) => ask(question, { nowMs: 0 });
const firsts: readonly string[] = Object.values(urgentCards).map(({ first }) => first);

/** The headline, or why nothing was answered. */
function headlineOf(question: string): string {
  try {
    return told(question).headline;
  } catch (error) {
    return error instanceof Error ? `thrown: ${error.message}` : 'thrown';
  }
}

describe.each(urgentIds)('%s', (id) => {
  it.each(alarms[id] ?? [])('comes first for: %s', (question) =>
    expect(headlineOf(question)).toContain(urgentCard(id).first),
  );

  it('is asked for in words at all', () => expect(alarms[id]?.length ?? 0).toBeGreaterThan(1));
});

describe('no alarm', () => {
  it.each(calm)('%s', (question) => expect(firsts).not.toContain(headlineOf(question)));
});

describe('numbers said in a hurry', () => {
  it.each([
    // 86 °F = (86 - 32)/1.8 = 30 °C; 68 °F = 20 °C; 63 °F = 17.2 °C.
    ['water is 86 degrees and rising', /temperature 30 °C/],
    ['heater not working water is 68f', /temperature 20 °C/],
    ['tank temp is 63F', /temperature 17\.2 °C/],
    ['ato overfilled and salinity is at 28', /salinity 28 ppt/],
    ['salinity dropped to 1.015 overnight', /back to 35 ppt/],
    ['alk went to 18 dkh help', /alkalinity 18 dKH/],
    ['ammonia reading 1.0 what do i do', /1 mg\/L becomes 0\.5 mg\/L/],
    ['salinity 45 ppt what do i do', /not used: salinity "45 ppt" \(far too high/],
    ['salinity is 1.040 help', /not used: salinity "1\.040" \(far too high/],
  ])('%s', (question, pattern) => {
    const { read, facts } = told(question);
    expect([...read, ...facts.map(({ value }) => value)].join('\n')).toMatch(pattern);
  });
});

describe('somebody in despair', () => {
  it.each([
    'i want to kill myself',
    'my tank crashed and i am suicidal',
    'raise alk 7 to 8 in 75 gal, i dont want to live anymore',
  ])('people who can help, and nothing of tanks: %s', (question) => {
    const given = told(question);
    expect(given.headline).toMatch(/^You matter more than any tank/);
    expect(rendered(given).issues).toEqual([]);
    expect(given.next).toEqual([]);
  });
});

describe('a poisonous mixture that is only planned', () => {
  it('is refused with the reason first', () =>
    expect(headlineOf('can i mix bleach and vinegar to clean my tank')).toMatch(
      /^No\. Never mix bleach with acid/,
    ));
});
