import { handling, hazard } from '../../core/care/hazards.ts';
import type { Compound } from '../../core/dosing/compound.ts';
import { solubility } from '../../core/dosing/solubility.ts';
import { suppliedPerMl } from '../../core/dosing/solution.ts';
import { significant, volume } from '../../core/quantity/format.ts';
import { weighable } from '../../core/quantity/portion.ts';
import type { ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer } from '../answer.ts';
import { shown } from './asked.ts';
import { HANDBOOK } from './stock.ts';

/** How much of a powder a bottle can hold: what dissolves at most, and what keeps dissolved in a cool room. */
export function strongest(
  compound: Compound,
  id: ParameterId,
  finalL: number,
  read: readonly string[],
): Answer {
  const { mostGL, stockGL, tempC, source } = solubility(compound);
  const perMl = suppliedPerMl(compound, id, stockGL);
  return answer({
    headline: `Weigh in ${weighable(stockGL * finalL)} of ${compound.name} for ${volume(finalL)}, so that none falls out in a cool room.`,
    read,
    facts: [
      {
        label: 'At most',
        value: `about ${weighable(mostGL * finalL)} is sure to dissolve at ${tempC} °C${source === 'memory' ? HANDBOOK : ''}, ${significant(mostGL, 2)} g per litre`,
      },
      {
        label: 'To weigh in',
        value: `${significant(stockGL, 2)} g per litre: each mL raises 100 L by ${shown(id, perMl / 100)}`,
      },
    ],
    steps: [
      compound.hazard === 'lime'
        ? 'Use only the clear liquid above the settled powder; see /dose limewater.'
        : 'Dissolve in about three quarters of the water, then fill up to the mark with fresh (RO) water.',
      'Label the bottle with what it is, its strength and the date. Keep it closed; never in a drinks bottle.',
    ],
    ...handling(compound.hazard),
    sources: ['iupac21', hazard(compound.hazard).basis, source],
  });
}
