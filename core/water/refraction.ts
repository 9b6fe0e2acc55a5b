import { fixed } from '../quantity/format.ts';
import { inRange, Problem } from '../problem.ts';
import { say } from '../wording/say.ts';
import { readingInRange } from './reading-range.ts';

/**
 * Refractive index of seawater relative to air, no unit.
 *
 * `practicalSalinity` 0 to 35; `tempC` 0 to 30 deg C; `wavelengthNm` 400 to 700, default the sodium line a refractometer
 * is built for. Source: qf95. Check [computed from qf95]: S 35, 20 deg C, 589.3 nm -> 1.339406; S 0 -> 1.333004.
 * Doubt: error 3e-5 (0.16 in S) and the range as quoted in public codes, paper not seen.
 *
 * @throws Problem outside the ranges.
 */
export function refractiveIndex(practicalSalinity: number, tempC: number, wavelengthNm = 589.3): number {
  const s = inRange('salinity', practicalSalinity, 0, 35, '');
  const t = inRange('temperature', tempC, 0, 30, '°C');
  const nm = inRange('wavelength', wavelengthNm, 400, 700, 'nm');
  return (
    1.31405 +
    (1.779e-4 - 1.05e-6 * t + 1.6e-8 * t * t) * s -
    2.02e-6 * t * t +
    (15.868 + 0.01155 * s - 0.00423 * t) / nm -
    4382 / nm ** 2 +
    1.1455e6 / nm ** 3
  );
}

/** A refractometer read on fresh water (taken to be right) and on a standard, both on the scale of the instrument. */
export interface RefractometerCheck {
  readonly scale: 'specific gravity' | 'ppt';
  readonly standardReading: number;
  readonly standardTrue: number;
}

/** `corrected` tank value, `errorAtStandard` (reading minus truth there), both on the scale; `slope` true per shown. */
export interface RefractometerCorrection {
  readonly corrected: number;
  readonly errorAtStandard: number;
  readonly slope: number;
}

/**
 * Corrects a refractometer whose zero is right but whose standard reads wrong: a straight line through both points.
 *
 * true = zero + (reading - zero) (standardTrue - zero) / (standardReading - zero), zero being 1.000 or 0 ppt. A straight
 * line is right because qf95 is linear in salinity at one temperature and specific gravity nearly so; read both liquids
 * at one temperature. `reading` from
 * zero to 1.3 times the standard; slope 0.7 to 1.3. Check (worked by hand): standard shows 1.028 where 1.0264 is true,
 * tank 1.026 -> 1.02451. Doubt: a standard made for conductivity only may not have seawater's refractive index; the
 * answer is an estimate until the instrument is set on the standard and the tank read again.
 *
 * @throws Problem when the standard is too far off to correct for, or the reading is off the line.
 */
export function correctRefractometer(reading: number, check: RefractometerCheck): RefractometerCorrection {
  const zero = check.scale === 'ppt' ? 0 : 1;
  const unit = check.scale === 'ppt' ? 'ppt' : '';
  const digits = check.scale === 'ppt' ? 1 : 4;
  const shownIn = (value: number): string => `${fixed(value, digits)} ${unit}`.trim();
  const shown = check.standardReading - zero;
  const slope = (check.standardTrue - zero) / shown;
  if (!(shown > 0 && slope >= 0.7 && slope <= 1.3)) {
    throw new Problem(say('salinity.standardTooFar'), {
      field: 'standard reading',
      given: shownIn(check.standardReading),
      limit: say('salinity.limitStandard', { standard: shownIn(check.standardTrue) }),
      hint: say('salinity.hintSetStandard'),
    });
  }
  const kind = { field: 'reading', digits, unit };
  const raised = readingInRange(kind, reading, zero, zero + 1.3 * shown) - zero;
  return {
    corrected: zero + raised * slope,
    errorAtStandard: check.standardReading - check.standardTrue,
    slope,
  };
}
