import { findCompound, type Compound } from '../../core/dosing/compound.ts';
import { supplyPerG } from '../../core/dosing/dose.ts';
import { Problem } from '../../core/problem.ts';
import { fixed, fromUnit, mass, significant, toUnit, volume } from '../../core/quantity/format.ts';
import { readAlike, readQuantity } from '../../core/quantity/read.ts';
import { dilutionL } from '../../core/tank/dilution.ts';
import type { Likely } from '../../core/tank/displaced.ts';
import { parameter } from '../../core/water/parameter.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { say } from '../../core/wording/say.ts';

/** Water measured by a dose. */
export interface AskedDilution {
  readonly netL: Likely;
  readonly basis: string;
  readonly read: readonly string[];
  readonly working: readonly string[];
  readonly cautions: readonly string[];
}

/** Where high and low differ by more, the answer says so: this project's own choice. */
const WIDE = 1.3;
const WIDE_CAUTION =
  'The range is wide. Until you know better, work out doses with its low end, and measure again with a finer kit.';

const FORM =
  /^\s*([\d.,]+\s*[a-z]+)\s+(?:of\s+)?(.+?)(?:,|;)?\s+(?:raised\s+)?(?:(?:alk|alkalinity|kh|ca|calcium|mg|magnesium)\s+)?(?:from\s+)?(\d[\d.,]*(?:\s*[^\d\s>-]\S*)?)\s*(?:->|→|-|\bto\b)\s*(\d.*)$/i;

/**
 * Reads "20 g baking soda, 7.0 to 8.1 dKH" and works the volume back from the rise.
 *
 * @throws Problem when the form is another one, the salt is unknown or open, or the rise is within the kit's error.
 */
export function askedDilution(text: string): AskedDilution {
  const [, massText = '', salt = '', beforeText = '', afterText = ''] = FORM.exec(text) ?? [];
  if (afterText === '') {
    throw new Problem(say('tank.iCouldNotRead'), {
      field: 'dilution',
      given: text,
      limit: say('tank.limitDilution'),
    });
  }
  const compound = onlyCompound(salt, text);
  const [id] = compound.raises;
  if (id === undefined) throw new Error(`${compound.name} raises nothing`);
  const { label, kind, unit, kitResolution } = parameter(id);
  const { pace } = limitsOf(id);
  const { value: massG } = readQuantity('mass', massText, { field: 'dilution' });
  const texts = [beforeText, afterText].map((part) => ({ text: part, field: 'dilution' }));
  const [before, after] = readAlike(kind, texts);
  if (before === undefined || after === undefined) throw new Error('readAlike lost a reading');
  const perG = supplyPerG(compound, id);
  const resolution = fromUnit(kind, kitResolution, unit);
  const netL = dilutionL({ supplied: massG * perG, before: before.value, after: after.value, resolution });
  const own = (value: number): string => significant(toUnit(kind, value, unit), 4);
  const rise = after.value - before.value;
  const per = kind === 'alkalinity' ? 'meq' : 'mg';
  const risen = `${own(before.value)} to ${own(after.value)} ${unit}`;
  const fast = pace !== undefined && toUnit(kind, rise, unit) > pace.up;
  return {
    netL,
    basis: `measured: ${mass(massG)} ${compound.name} raised ${label} from ${risen}`,
    read: [
      `${mass(massG)} of pure, dry ${compound.name} raised ${label} from ${risen}`,
      ...new Set([...before.notes, ...after.notes]),
    ],
    working: [
      `${mass(massG)} x ${significant(perG, 5)} ${per}/g = ${significant(massG * perG, 4)} ${per}`,
      `${significant(massG * perG, 4)} ${per} / ${significant(rise, 4)} ${per}/L = ${volume(netL.likely)}`,
      `The kit tells ${kitResolution} ${unit} apart, so the rise is ${own(rise)} ± ${fixed(kitResolution, 3)} ${unit}: ${volume(netL.low)} to ${volume(netL.high)}`,
    ],
    cautions: [
      ...(netL.high > netL.low * WIDE ? [WIDE_CAUTION] : []),
      'The tank uses some between the readings: retest within hours, once all is dissolved and mixed.',
      ...(fast
        ? [`A rise of more than ${pace.up} ${unit} a day is faster than usual; use less next time.`]
        : []),
    ],
  };
}

function onlyCompound(salt: string, text: string): Compound {
  const found = findCompound(salt);
  if (found === undefined) {
    throw new Problem(say('tank.iDoNotKnow', { salt }), {
      field: 'dilution',
      given: text,
      hint: say('tank.productUnknownStrengthCannot'),
    });
  }
  if ('name' in found) return found;
  throw new Problem(say('tank.whichForm', { salt }), {
    field: 'dilution',
    given: text,
    choices: found.map(({ name }) => text.replace(salt, name)),
  });
}
