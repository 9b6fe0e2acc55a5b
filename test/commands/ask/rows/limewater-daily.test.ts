import { describe, expect, it } from 'vitest';
import { dosingRows } from '../../../../commands/ask/rows/dosing.ts';
import { solutionRows } from '../../../../commands/ask/rows/solution.ts';
import { useRows } from '../../../../commands/ask/rows/use.ts';
import { rowAnswer } from './asked.ts';

describe('limewater in the top-off', () => {
  // 2 tsp of 2.5 to 3.5 g (common practice) in 5 L: 1 to 1.4 g/L; 3 L of it 81 to 113 meq (74.09 g/mol, 2 eq), 2.8 dKH a meq/L.
  it('says what the evaporation of a day brings', () => {
    const text = 'kalk in the ato, evaporates 3 l a day, 2 tsp per 5 l too strong?';
    const { headline, facts } = rowAnswer(solutionRows, 'limewater', text) ?? expect.unreachable();
    expect(headline).toMatch(/^Not too strong: .*1 to 1\.4 g per litre/);
    expect(facts[0]?.value).toMatch(/bring 2\.3 to 3\.2 dKH to each 100 L/);
  });

  // 2.5 L of 1.504 g/L: 101.5 meq in 180 L = 0.564 meq/L = 1.58 dKH (Bates et al. 1956).
  it('takes a bare evaporation in the unit of the vessel', () => {
    const text = 'kalkwasser in my 12 l top-off barrel, tank drinks 2.5 a day out of 180. how many tsp';
    const given = rowAnswer(solutionRows, 'limewater', text);
    expect(given?.headline).toMatch(/12 L of limewater.*5\.2 to 8 level teaspoons/);
    expect(given?.facts[0]?.value).toMatch(/1\.58 dKH.*in 180 L/);
  });
});

describe('what was given is not asked again', () => {
  // 65 mg/L x 295.3 L = 19.2 g of calcium; x 147.01/40.08 = 70.4 g.
  it('takes the level that is to be restored for the goal', () => {
    const text =
      'Calcium came back at 365, short of the 430 it had. 78 gallons. Calcium chloride dihydrate, what weight restores the position?';
    expect(rowAnswer(dosingRows, 'dose-amount', text)?.headline).toMatch(
      /^70\.\d g .*365 mg\/L to 430 mg\/L/,
    );
  });

  it('asks the strength of a liquid that is dosed, and gives no grams for it', () => {
    const text = 'dosers on 18 ml a day and i still lose half a dkh every week. what do i wind it up to';
    expect(rowAnswer(useRows, 'dose-daily', text)?.headline).toMatch(/^How strong is it/);
  });
});
