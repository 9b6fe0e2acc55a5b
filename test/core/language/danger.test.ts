import { describe, expect, it } from 'vitest';
import { loadReader } from '../../../bot/reader/load.ts';
import { dangerSide, dangersIn } from '../../../core/language/danger.ts';

describe('a level that is an emergency by itself', () => {
  // Limits are common practice (core/water/limits.ts). (91 - 32) / 1.8 = 32.8 °C; 1 dKH = 0.357 meq/L.
  it.each([
    ['temperature', '91 F', 'high'],
    ['temperature', '130 F', 'high'],
    ['temperature', '91', 'high'],
    ['temperature', '66', 'low'],
    ['temperature', '19 C', 'low'],
    ['temperature', '26 C', undefined],
    ['temperature', '29.9', undefined],
    ['temperature', '2 F', undefined],
    ['salinity', '1.014', 'low'],
    ['salinity', '1.024', undefined],
    ['salinity', '1.060', 'high'],
    ['salinity', '26', 'low'],
    // 53 mS/cm is 35 ppt (PSS-78): a bare 53 is no danger.
    ['salinity', '53', undefined],
    ['salinity', '2 ppt', undefined],
    ['alkalinity', '14 dKH', 'high'],
    ['alkalinity', '6 meq/L', 'high'],
    ['alkalinity', '9', undefined],
    ['alkalinity', '60', undefined],
    ['ammonia', '0.5', 'high'],
    ['ammonia', '0', undefined],
    ['ph', '9.1', 'high'],
    ['ph', '8.2', undefined],
  ] as const)('%s %s: %s', (of, text, side) => {
    expect(dangerSide(of, text)).toBe(side);
  });
});

const cards = (text: string): readonly string[] => dangersIn(loadReader().read(text)).map(({ card }) => card);

describe('what is over or long past', () => {
  it.each([
    'tank hit 33 C two summers ago. is a chiller worth it',
    'salinity dropped to 1.015 last year after the top-off stuck, how do i stop it happening again',
    'ammonia was 2 back in 2019, should i still test for it',
    'it was 31 C in the tank yesterday, everyone lived and it is under control',
  ])('is none: %s', (text) => expect(cards(text)).toEqual([]));

  it.each([
    'two years ago i had a crash. tank is at 33 C now',
    'tank hit 33 C, same as two summers ago, help',
  ])('is one: %s', (text) => expect(cards(text)).toEqual(['overheating']));
});

describe('dangers of a message', () => {
  it.each([
    ['91F', 'overheating'],
    ['31.5 C in the tank and climbing', 'overheating'],
    ['tank is 84F and rising, fish gasping', 'overheating'],
    ['woke up and the tank is 66 degrees, heater dead', 'cold water'],
    ['salinity 1.014', 'salinity crash'],
    ['ammonia 2 ppm and fish in', 'ammonia'],
    ['not sure if my thermometer is right, it says 91F', 'overheating'],
    ['alk hit 18 dkh after the doser ran all night', 'overdose'],
    ['limewater ran in all night, ph 9.1', 'overdose'],
  ])('%s: %s', (text, card) => {
    expect(cards(text)[0]).toBe(card);
  });

  it.each([
    'what if the salinity drops to 1.014',
    'they say 91F kills corals',
    'cycling a new tank, ammonia 2 ppm, nitrite 0',
    'salinity 1.021, want 1.025, 200 L',
    'tank is at 26 C, salinity 35 ppt, alk 8',
    'heater stuck last night, it was 91F, all good now, back to 78F',
    'hyposalinity at 1.009 in the quarantine tank',
  ])('none: %s', (text) => {
    expect(cards(text)).toEqual([]);
  });
});
