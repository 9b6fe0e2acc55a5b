import { describe, expect, it } from 'vitest';
import { urgentCard, urgentIds } from '../../../../core/care/urgent/cards.ts';
import { dosesWithin } from '../medicine.ts';

/** Where hands go near mains and water: the plug or the breaker comes before the water. */
const MAINS = [
  'fire or sparks',
  'mains fault',
  'out of the water',
  'flood',
  'burst heater',
  'overheating',
  'cold water',
  'power cut',
  'oxygen loss',
  'overdose',
  'shredded anemone',
] as const;

describe.each(urgentIds)('%s', (id) => {
  const { first, steps, never, stop, sources, label } = urgentCard(id);

  it('has a first action, ordered steps, what not to do and when to stop', () => {
    for (const text of [first, stop, ...steps, ...never]) expect(text).toMatch(/^[A-Z].*[.?!]$/);
    expect(steps.length).toBeGreaterThanOrEqual(5);
    expect(never.length).toBeGreaterThan(0);
    expect(sources.length).toBeGreaterThan(0);
    expect(label.length).toBeLessThanOrEqual(40);
  });

  it('holds no dose of a medicine', () => expect(dosesWithin(urgentCard(id))).toEqual([]));
});

describe('mains', () => {
  it.each(MAINS)('%s: off before hands go in', (id) => {
    const { first, steps } = urgentCard(id);
    expect(`${first} ${steps[0] ?? ''}`).toMatch(/unplug|plug|breaker/i);
  });
});

describe('fire', () => {
  it('gets people out before anything else, and never with water', () => {
    const { first, never } = urgentCard('fire or sparks');
    expect(first).toMatch(/^People first: .*everybody out.*fire service/);
    expect(never.join(' ')).toMatch(/No water on anything electric/);
    expect(never.join(' ')).toMatch(/Do not go back in for animals/);
  });
});
