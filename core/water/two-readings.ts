import { DKH_PER_MEQ_L, MG_CACO3_PER_MEQ, NO3_PER_N, PO4_PER_P } from '../quantity/unit.ts';
import { parameter, type ParameterId } from './parameter.ts';

/** Two readings of one water, in the parameter's own unit. */
export interface TwoReadings {
  readonly gap: number;
  /** Whether two good kits can be so far apart on the same water. */
  readonly agree: boolean;
  /** Two units the same number may have been written in, where that would explain the gap. */
  readonly units: string | undefined;
}

/** Kits of one water scatter by up to this share of their mean. Common practice, no source. */
const SCATTER = 0.15;
/** Zero of these scales is no absence, so a share of the mean says nothing. */
const NO_SHARE: ReadonlySet<ParameterId> = new Set(['ph', 'temperature']);

/** Units a number of a parameter is confused between, and the factor from the one to the other (iupac21). */
const CONFUSED: Readonly<
  Partial<Record<ParameterId, readonly (readonly [factor: number, words: string])[]>>
> = {
  alkalinity: [
    [DKH_PER_MEQ_L, 'meq/L and dKH'],
    [MG_CACO3_PER_MEQ / DKH_PER_MEQ_L, 'dKH and ppm of CaCO3'],
    [MG_CACO3_PER_MEQ, 'meq/L and ppm of CaCO3'],
  ],
  nitrate: [[NO3_PER_N, 'nitrogen (NO3-N) and nitrate (NO3)']],
  phosphate: [[PO4_PER_P, 'phosphorus (P) and phosphate (PO4)']],
};
/** So near to a factor the ratio of two readings must be; own choice, about what kits scatter. */
const NEAR = 0.1;

/**
 * Judges two readings of the same water. They agree within 15 % of their mean, or within twice what a kit can tell apart;
 * pH and temperature only within the latter. `units` names a factor (4.43 of nitrate, 3.07 of phosphate, 2.80 and
 * 17.8 of alkalinity) that their ratio comes within 10 % of.
 * Check: 10.1 and 13.4 dKH -> apart; 400 and 440 mg/L of calcium -> agree; nitrate 2.3 and 10 -> NO3-N and NO3.
 */
export function twoReadings(id: ParameterId, a: number, b: number): TwoReadings {
  const gap = Math.abs(a - b);
  const share = NO_SHARE.has(id) ? 0 : (SCATTER * (a + b)) / 2;
  const agree = gap <= Math.max(share, 2 * parameter(id).kitResolution) * (1 + 1e-9);
  const ratio = Math.max(a, b) / Math.min(a, b);
  const found = agree ? undefined : CONFUSED[id]?.find(([factor]) => Math.abs(ratio / factor - 1) <= NEAR);
  return { gap, agree, units: found?.[1] };
}
