import { describe, expect, it } from 'vitest';
import { boxOf } from '../../../core/language/box-said.ts';
import { fillSlots } from '../../../core/language/fill-slots.ts';
import { saltsSaid } from '../../../core/language/salt-said.ts';
import { scan } from '../../../core/language/tokens.ts';
import { saidOf } from './said-of.ts';

/** The slots of a message whose numbers play these parts. */
function slotsOf(...message: Parameters<typeof saidOf>) {
  const { scanned, said } = saidOf(...message);
  return fillSlots(scanned, said).slots;
}

describe('what a bottle says of itself', () => {
  it('is no level and no tank', () => {
    const text = '1 ml per 50 l gives 0.1 dkh, i am at 7 and want 9 in 128 l';
    const slots = slotsOf(
      text,
      ['strength', 'alkalinity'],
      ['strength', 'nothing'],
      ['strength', 'alkalinity'],
      ['now', 'alkalinity'],
      ['wanted', 'alkalinity'],
      ['system', 'nothing'],
    );
    expect(slots.bottle).toEqual({ of: 'alkalinity', dose: '1 ml', per: '50 l', raises: '0.1 dkh' });
    expect(slots).toMatchObject({ now: '7', wanted: '9', volume: '128 l' });
    expect(slots.levels).toHaveLength(2);
  });

  it('is of a millilitre where none was said', () => {
    const slots = slotsOf('it gives 0.1 dkh per ml', ['strength', 'alkalinity']);
    expect(slots.bottle).toEqual({ of: 'alkalinity', dose: '1 ml', raises: '0.1 dkh' });
  });
});

describe('a salt', () => {
  it.each<readonly [string, readonly string[]]>([
    ['calcium chloride, the dihydrate', ['calcium chloride dihydrate']],
    ['calcium chloride', ['calcium chloride']],
    ['the chloride of calcium', ['calcium chloride']],
    ['nothing of the sort', []],
  ])('%s', (text, salts) => expect(saltsSaid(scan(text), 'calcium')).toEqual(salts));
});

const withSump = (text: string) => slotsOf(text, ['system', 'nothing'], ['part', 'sump']).volume;
const SIDE = ['length', 'nothing'] as const;
const sides = (text: string) => boxOf(saidOf(text, SIDE, SIDE, SIDE).said);

describe('other quantities', () => {
  it('a strength of a powder and its water: 500 g in 2 l', () => {
    const slots = slotsOf('500 g soda ash to 2 l', ['strength', 'substance'], ['strength', 'substance']);
    expect(slots.strength).toBe('250 g/l');
  });

  it('the unit of a volume stands before it, and is not that of a powder', () => {
    expect(slotsOf('my tank in gallons (34)', ['system', 'nothing']).volume).toBe('34 gal');
    expect(slotsOf('litres: 300', ['system', 'nothing']).volume).toBe('300 l');
    const ounces = slotsOf('75 tank, 5 oz soda', ['system', 'nothing'], ['amount', 'substance']);
    expect(ounces.volume).toBe('75');
  });

  it('a sump beside a tank has its own unit, and half of one is no litre', () => {
    expect(withSump('75 gal and a 60 l sump')).toBe('75 gal + 60 l');
    expect(withSump('240 l and a sump half full')).toBe('240 l');
  });

  it('a vessel is the volume, and not the half of it', () => {
    const slots = slotsOf('half of the 80 litres', ['part', 'container'], ['part', 'container']);
    expect(slots.container).toBe('80 litres');
  });

  it('spoons by their whole name are a dose', () => {
    const slots = slotsOf('2 teaspoons of it', ['rate', 'alkalinity']);
    expect(slots.amount).toBe('2 teaspoons');
    expect(slots.waterRate).toBeUndefined();
  });

  it('a level of phosphorus keeps that it is', () => {
    expect(slotsOf('phosphorus 42 ppb', ['now', 'phosphate']).now).toBe('42 ppb P');
    expect(slotsOf('phosphate 42 ppb', ['now', 'phosphate']).now).toBe('42 ppb');
  });

  it('a level keeps its day where other words stand between', () => {
    const text = 'friday, since i ran out of the stuff, it was 8.4. now 8';
    const slots = slotsOf(text, ['moment', 'nothing'], ['was', 'alkalinity'], ['now', 'alkalinity']);
    expect(slots.levels?.map(({ moment }) => moment)).toEqual(['friday', undefined]);
  });

  it('a box is three sides of one unit', () => {
    expect(sides('60 x 40 x 45 cm')).toBe('60 x 40 x 45 cm');
    expect(sides('4 ft x 18 in x 20 in')).toBe('4 ft x 18 in x 20 in');
    expect(sides('4ft 18 18')).toBe('4 ft x 18 in x 18 in');
    expect(sides('4 x 2 x 2 ft')).toBe('4 x 2 x 2 ft');
    expect(sides('1.2 m x 50 x 45')).toBe('1.2 m x 50 cm x 45 cm');
    expect(sides('4 ft x 18 x 20 in')).toBeUndefined();
  });
});
