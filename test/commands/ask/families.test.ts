import { describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import { findCommand } from '../../../commands/index.ts';
import { isPersonHurt } from '../../../core/care/hurt/person-words.ts';
import { NO_MEDICINE } from '../../../core/care/urgent/people.ts';
import { urgentCard, urgentCards, urgentIds } from '../../../core/care/urgent/cards.ts';
import { hear } from '../../../core/words/hear.ts';
import { familyAlarms, familyCalm, namedMedicines } from '../../cases/families.ts';

const told = (question: string) => ask(question, { nowMs: 0 });

function headlineOf(question: string): string {
  try {
    return told(question).headline;
  } catch (error) {
    return error instanceof Error ? `thrown: ${error.message}` : 'thrown';
  }
}

describe.each(urgentIds.filter((id) => familyAlarms[id] !== undefined))('%s', (id) => {
  it.each(familyAlarms[id] ?? [])('comes first for: %s', (question) =>
    expect(headlineOf(question)).toContain(urgentCard(id).first),
  );
});

describe('a medicine', () => {
  const claim = findCommand(['claim']);

  it.each(namedMedicines)('no amount, the vet and the label first: %s', (sentence) => {
    expect(told(sentence).headline).toBe(NO_MEDICINE);
    expect(claim?.run({ rule: sentence }, { nowMs: 0 }).headline).toBe(NO_MEDICINE);
  });

  it('no amount of it is printed, and never the display', () => {
    const { facts, cautions } = told('they say 0.2 ppm ivermectin');
    expect(facts).toEqual([]);
    expect(cautions[0]).toMatch(/^Never into the display/);
  });
});

describe('nobody is hurt and nothing is wrong', () => {
  const firsts = Object.values(urgentCards).map(({ first }) => first);

  it.each(familyCalm)('%s', (question) => {
    expect(isPersonHurt(hear(question).text)).toBe(false);
    const headline = headlineOf(question);
    expect(firsts.filter((first) => headline.includes(first))).toEqual([]);
  });
});

describe('numbers of a family', () => {
  it.each([
    // 102 °F = 38.9 °C, 104 °F = 40 °C, 58 °F = 14.4 °C: (F - 32) / 1.8.
    ['water hit 102', /38\.9 °C/],
    ["help it's 94 in the tank", /34\.4 °C/],
    ['tank is down to 58', /14\.4 °C/],
    ['dumped in too much calcium chloride, calcium is 12000', /not used: now "12000"/],
    ['overdosed magnesium, it reads 6000', /not used: now "6000"/],
    ['magnesium overdose, magnesium is 1700 now, 100 gal', /after two/],
  ])('%s', (question, pattern) => {
    const { read, facts } = told(question);
    expect([...read, ...facts.map(({ value }) => value)].join('\n')).toMatch(pattern);
  });
});
