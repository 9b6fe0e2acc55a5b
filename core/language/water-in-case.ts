import type { Case } from './case.ts';
import type { Reading } from './reading.ts';
import { isDoseUnit } from './kinds-of-said.ts';
import { inUnit, type Said } from './said.ts';
import { toldNumbers, type ToldNumber } from './told-numbers.ts';
import { isWithin } from './within.ts';

/** A volume farther than this factor from the tank's is another vessel's, unless a tank is spoken of; own choice. */
const FACTOR = 4;
/** Words for the water of a whole tank. Grammar: nothing is learnt of them. */
const TANK: ReadonlySet<string> = new Set(
  'tank tanks aquarium system reef nano pico cube display sump total net'.split(' '),
);

/**
 * Volumes as their case has them: a bare one is in the unit of those told before; one that is no size for the tank told
 * before is a vessel's, and so is one that repeats or puts right a vessel where no tank was told of.
 */
export function withWater(reading: Reading, before: Case): Reading {
  const told = toldNumbers(before);
  const tank = told.find(({ part, unit }) => part === 'system' && unit !== '');
  const vessel = told.find(({ part, unit }) => part === 'part' && unit !== '');
  const isOfTank = reading.scanned.tokens.some(({ word }) => TANK.has(word));
  const bare = reading.said.filter((one) => one.part === 'system' && one.number.kinds.length === 0);
  const hasUnit = reading.said.some(({ number }) => number.kinds.includes('volume'));
  const dose = reading.said.find(({ number: { unit } }) => isDoseUnit(unit))?.number.unit;
  const all = reading.said.map((one): Said => {
    if (bare.includes(one) && tank !== undefined && dose !== undefined)
      // "there's still 150 ml in, so it's 250 that went": a bare number beside millilitres is in them.
      return inUnit({ ...one, part: 'amount', of: 'substance' }, dose, ['volume']);
    if (bare.includes(one)) return hasUnit ? one : withUnit(one, bare, tank ?? unitIn(told));
    const { kinds, unit } = one.number;
    if (one.part === 'system' && isDoseUnit(unit)) return { ...one, part: 'amount', of: 'substance' };
    const isWater = (one.part === 'system' || one.part === 'amount') && kinds.includes('volume');
    if (!isWater || kinds.includes('mass') || isDoseUnit(unit)) return one;
    const isVessel =
      tank === undefined
        ? vessel !== undefined && isNear(one, vessel)
        : vessel?.value === one.number.value || (!isOfTank && !isNear(one, tank));
    return isVessel && !isOfTank ? { ...one, part: 'part', of: 'container' } : one;
  });
  return { ...reading, said: all };
}

/** A list of bare numbers ("a 50, a 100") or one that is far from the tank is no volume of it. */
function withUnit(one: Said, bare: readonly Said[], tank: ToldNumber | undefined): Said {
  if (tank === undefined) return one;
  if (bare.length > 1 || (tank.part === 'system' && !isNear(one, tank))) return { ...one, part: 'none' };
  return inUnit(one, tank.unit, ['volume']);
}

/** Another volume that was told with its unit. */
function unitIn(told: readonly ToldNumber[]): ToldNumber | undefined {
  return told.find(({ part, unit }) => (part === 'changed' || part === 'part') && /^(?:l|gal)/.test(unit));
}

function isNear({ number: { value } }: Said, told: ToldNumber): boolean {
  return isWithin(FACTOR, value, told.value);
}
