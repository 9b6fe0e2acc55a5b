import { describe, expect, it } from 'vitest';
import {
  handling,
  hazard,
  hazardLine,
  type HazardId,
  hazards,
  LABEL_FIRST,
} from '../../../core/care/hazards.ts';
import { compounds } from '../../../core/dosing/compound.ts';

/** UN GHS statements on generic safety data sheets and ICSC 0408. */
const seen: readonly { id: HazardId; codes: readonly string[]; signal: string; source: string }[] = [
  { id: 'lime', codes: ['H315', 'H318', 'H335'], signal: 'Danger', source: 'generic data sheets, ICSC 0408' },
  { id: 'carbonate', codes: ['H319'], signal: 'Warning', source: 'German labelling list' },
  { id: 'calcium-chloride', codes: ['H319'], signal: 'Warning', source: 'generic data sheet' },
  { id: 'potassium-nitrate', codes: ['H272'], signal: 'Warning', source: 'generic data sheets' },
];

describe('hazards', () => {
  it.each(seen)('$id carries $codes ($source)', ({ id, codes, signal }) => {
    expect(hazard(id).statements).toEqual(codes);
    expect(hazard(id).signal).toBe(signal);
    expect(hazard(id).basis).toBe('ghs');
    for (const code of codes) expect(hazardLine(id)).toContain(code);
    expect(hazardLine(id)).not.toContain('memory');
  });

  it('says so where a class is from memory', () => {
    expect(hazardLine('sodium-nitrate')).toContain('(from memory)');
    expect(hazardLine('iodide')).toContain('(from memory)');
    expect(hazardLine('bicarbonate')).toBeUndefined();
  });

  it('always ends with the label, local rules, children and acids', () => {
    for (const id of Object.keys(hazards)) expect(handling(id as HazardId).cautions.at(-1)).toBe(LABEL_FIRST);
    expect(LABEL_FIRST).toMatch(/label.*local rules.*children.*acids/s);
  });

  it('tells what can hurt apart from the remarks, a line each', () => {
    for (const id of Object.keys(hazards) as HazardId[]) {
      const { dangers, cautions } = handling(id);
      for (const danger of dangers) {
        expect(danger.length).toBeLessThanOrEqual(110);
        expect(cautions).not.toContain(danger);
      }
      if (hazard(id).signal !== 'none') expect(dangers.length).toBeGreaterThan(0);
    }
  });

  it('a signal word goes with statements, and every hazard with a compound', () => {
    const ids = Object.keys(hazards) as HazardId[];
    for (const id of ids) expect(hazard(id).signal === 'none').toBe(hazard(id).statements.length === 0);
    expect(new Set(compounds.map((compound) => compound.hazard))).toEqual(new Set(ids));
  });
});
