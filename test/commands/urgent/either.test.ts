import { describe, expect, it, test } from 'vitest';
import { loadReader } from '../../../bot/reader/load.ts';
import { emergencyRows } from '../../../commands/ask/rows/emergencies.ts';
import { ask } from '../../../commands/ask.ts';
import { eitherHurt, eitherUrgent, isEither, personOrTank } from '../../../commands/urgent/either.ts';
import { hurtCard } from '../../../core/care/hurt/cards.ts';
import { urgentCard, urgentIds, type UrgentId } from '../../../core/care/urgent/cards.ts';
import { answered } from '../ask/rows/answered.ts';
import type { Reading } from '../../../core/language/reading.ts';

const nothing = () => ({});
const shown = (near: readonly UrgentId[]) => eitherUrgent(near, nothing);

describe('emergencies about as likely as each other', () => {
  it('is one where the next is near and the likeliest not too faint', () => {
    const meant = { first: undefined, others: [] };
    expect(isEither({ ...meant, share: 0.45, near: ['flood', 'overdose'] }, 'tank')).toBe(true);
    expect(isEither({ ...meant, share: 0.45, near: ['flood'] }, 'tank')).toBe(false);
    expect(isEither({ ...meant, share: 0.2, near: ['flood', 'overdose'] }, 'tank')).toBe(false);
  });

  test('power goes off before hands go in where any of them is of mains', () => {
    expect(shown(['overheating', 'burst heater', 'cold water']).headline).toMatch(
      /^Power off with dry hands/,
    );
    expect(shown(['salinity crash', 'flood']).headline).toMatch(/^Power off with dry hands/);
    expect(shown(['overdose', 'salinity crash']).headline).toMatch(/^Stop whatever still goes in/);
  });

  it.each(urgentIds)('%s: its first act and its button stand there', (id) => {
    const given = shown([id, 'oxygen loss']);
    expect(given.facts[0]).toEqual({ label: urgentCard(id).label, value: urgentCard(id).first });
    expect(given.next[0]?.input).toEqual({ what: id });
    expect(given.headline.length).toBeLessThanOrEqual(140);
  });

  test('a person: the emergency number first, and a group that is not told apart', () => {
    const given = eitherHurt(['cut or glass', 'sting, spine or bite']);
    expect(given.headline).toMatch(
      /^Faint, numb, short of breath or bleeding hard: the emergency number now/,
    );
    expect(given.facts[0]?.value).toBe(hurtCard('cut or glass').first);
    expect(given.next.at(-1)?.label).toBe('It is something else');
  });
});

describe('a person, or the tank alone', () => {
  const read = loadReader().read('bleach spilled into the sump');
  const as = (person: number, tank: number): Reading => ({
    ...read,
    kinds: [
      { name: 'person-hurt', probability: person },
      { name: 'urgent-water', probability: tank },
    ],
  });

  it('shows both where the tank is not far behind, the person first', () => {
    const given = personOrTank(as(0.6, 0.3), nothing);
    expect(given?.headline).toMatch(/^Is somebody hurt or unwell\? A person comes first/);
    expect(given?.facts.map(({ value }) => value)).toContain(urgentCard('bleach or spray').first);
  });

  it('leaves it to the card of the person where the tank is far behind', () =>
    expect(personOrTank(as(0.9, 0.1), nothing)).toBeUndefined());
});

/** Common practice, no source: what may be announced is answered for now and for then. */
describe('a power cut to come', () => {
  it.each([
    'power company is cutting us off on friday 8 to 4, what should I do for the tank',
    'they told us blackout tomorrow night, I have a battery pump',
  ])('%s', (text) => {
    const given = ask(text, { nowMs: 0, reader: loadReader() });
    expect(given.headline).toMatch(/from the minute it is off/);
    expect(given.steps[0]).toMatch(/^Not off yet/);
  });

  it('says nothing of it while it is dark', () => {
    const given = ask('power went out 3 hours ago in my 90 gal', { nowMs: 0, reader: loadReader() });
    expect(given.steps.join(' ')).not.toContain('Not off yet');
  });
});

/** Common practice, no source. */
describe('metal in the water is no burst heater', () => {
  it.each([
    ['found a coin under the rock, green all over', 'metal in the water'],
    ['magnet cleaner cracked and there is orange ooze', 'metal in the water'],
    ['the heater shattered in the tank', 'burst heater'],
  ] as const)('%s', (text, id) => {
    const given = answered(emergencyRows, 'urgent-water', text);
    expect(given?.headline).toBe(urgentCard(id).first);
  });
});
