import type { ChosenUnits } from '../core/quantity/chosen-units.ts';
import { say } from '../core/wording/say.ts';
import type { Fact } from './answer.ts';

/** The units that are chosen, a line each. */
export function unitFacts({ volume, length, temperature, alkalinity }: ChosenUnits): readonly Fact[] {
  const facts = [
    { label: say('units.volumes'), value: volume },
    { label: say('units.lengths'), value: length },
    { label: say('units.temperatures'), value: temperature },
    { label: say('units.alkalinities'), value: alkalinity },
  ];
  return facts.flatMap(({ label, value }) => (value === undefined ? [] : [{ label, value }]));
}
