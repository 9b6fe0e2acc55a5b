import { volume } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import type { SourceCode } from '../../core/sources.ts';
import type { Likely } from '../../core/tank/displaced.ts';
import type { Fact } from '../answer.ts';
import type { ChosenUnits } from '../../core/quantity/chosen-units.ts';

/** The water of a tank as the options give it. */
export interface AskedVolume {
  readonly netL: Likely;
  readonly displayL: number | undefined;
  readonly basis: string;
  readonly read: readonly string[];
  readonly facts: readonly Fact[];
  readonly working: readonly string[];
  readonly cautions: readonly string[];
  readonly sources: readonly SourceCode[];
}

/** Symbol of the unit a volume without one is in; undefined: the member is asked. */
export type VolumeUnit = ChosenUnits['volume'];

export function rangeFact({ low, high }: Likely): Fact {
  return { label: 'net water lies between', value: `${volume(low)} and ${volume(high)}` };
}

/** Percent where the text ends in a percent sign. */
export function readShare(text: string, field: string): number | undefined {
  return /%|percent|pct/i.test(text) ? readQuantity('share', text, { field }).value : undefined;
}
