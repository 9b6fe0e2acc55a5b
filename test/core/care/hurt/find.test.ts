import { describe, expect, it } from 'vitest';
import { hurtCard, hurtCards, hurtGroups, hurtIds } from '../../../../core/care/hurt/cards.ts';
import { hurtIn } from '../../../../core/care/hurt/find.ts';
import { isPersonHurt } from '../../../../core/care/hurt/person-words.ts';
import { hear } from '../../../../core/words/hear.ts';
import { hurts, unclearHurts } from '../../../cases/hurts.ts';
import { dosesWithin } from '../medicine.ts';

describe.each(hurtIds)('%s', (id) => {
  const { label, first, steps, never, basis, sources } = hurtCard(id);

  it('is said in at least six ways, each of them heard as this', () => {
    expect(hurts[id].length).toBeGreaterThanOrEqual(6);
    const heard = hurts[id].map((sentence) => {
      const { text } = hear(sentence);
      return [sentence, isPersonHurt(text), hurtIn(text)];
    });
    expect(heard).toEqual(hurts[id].map((sentence) => [sentence, true, id]));
  });

  it('is short enough to be read in a fright', () => {
    for (const text of [first, ...steps, ...never]) expect(text).toMatch(/^[A-Z].*[.?!]$/);
    expect(first.length).toBeLessThanOrEqual(140);
    expect(steps.length).toBeLessThanOrEqual(5);
    for (const step of steps) expect(step.length, step).toBeLessThanOrEqual(120);
    expect(label.length).toBeLessThanOrEqual(40);
  });

  it('says whom to call, what it rests on, and no amount of a medicine', () => {
    expect([first, ...steps].join(' ')).toMatch(/emergency number|poison centre|doctor|vet/);
    expect(basis.length * sources.length).toBeGreaterThan(0);
    expect(basis.join(' ')).toMatch(/from memory/);
    expect(dosesWithin(hurtCard(id))).toEqual([]);
    expect(JSON.stringify(hurtCard(id))).not.toMatch(/\d{3}[ -]?\d{3}|\b(?:911|112|999)\b/);
  });
});

/** The act that stands first: what is named here comes from the project's own brief, from GHS P-statements, or memory. */
describe('the first act', () => {
  it.each([
    ['electric shock', /^Do not touch them or the water: switch off at the breaker/],
    ['in the eye', /^Rinse at once with much clean water.*at least 20 minutes, then call/],
    ['palytoxin in eye or cut', /^Rinse at once.*at least 20 minutes/],
    ['palytoxin breathed', /^Everybody out of the room into fresh air now, pets too; then call/],
    ['fumes or smoke', /^Everybody and every pet out into fresh air now; call/],
    [
      'fish spine',
      /^Into hot water now, as hot as the other, unhurt hand bears \(about 45 °C, never scalding\), for 30 to 90 minutes\. Then a doctor/,
    ],
    ['on the skin', /^Off with what is wet with it, and rinse/],
    ['swallowed', /^Rinse the mouth.*Do not make them vomit\. Call the poison centre/],
    ['fire or burn', /everybody out, and call the fire service/],
    ['bite', /^Wash it with soap.*press.*Octopus or cone snail: the emergency number now/],
    ['infected wound', /^A doctor today: say "hurt in a fish tank/],
    ['pet', /^Call a vet or animal poison line now/],
    ['allergic reaction', /the emergency number now/],
    ['collapsed', /^Call your emergency number now/],
    ['glue', /^Do not pull/],
  ] as const)('%s', (id, pattern) => expect(hurtCard(id).first).toMatch(pattern));

  it('dry powder is brushed off before it is rinsed', () =>
    expect(hurtCards['on the skin'].steps[0]).toMatch(/^Dry powder.*brush it off first/));

  it('palytoxin is named to whoever answers', () => {
    for (const id of ['palytoxin breathed', 'palytoxin in eye or cut'] as const)
      expect(hurtCards[id].steps[0]).toMatch(/it may be palytoxin/);
  });

  it('an infected wound names both germs and tells the doctor of fish', () =>
    expect(hurtCards['infected wound'].steps.join(' ')).toMatch(/Vibrio.*Mycobacterium marinum.*fish/));
});

it('words that do not say how are left to the question', () => {
  for (const sentence of unclearHurts) {
    const { text } = hear(sentence);
    expect([sentence, isPersonHurt(text), hurtIn(text)]).toEqual([sentence, true, undefined]);
  }
});

it('a group holds hurts that no other group holds', () => {
  const ids = Object.values(hurtGroups).flatMap((group) => [...group.ids]);
  expect(new Set(ids).size).toBe(ids.length);
});
