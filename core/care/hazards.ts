import type { SourceCode } from '../sources.ts';

/**
 * What a powder can do to the person handling it: UN GHS hazard statements from generic safety data sheets, and the
 * sentences an answer shows. `basis` is `ghs` where a sheet was seen and `memory` where the class is from memory.
 * A product's own label and local rules come first; these lists are short and not a classification.
 */
interface Hazard {
  readonly signal: 'Danger' | 'Warning' | 'none';
  readonly statements: readonly StatementCode[];
  readonly basis: Extract<SourceCode, 'ghs' | 'memory'>;
  readonly cautions: readonly string[];
}

/** Short meaning of each GHS statement used here (ghs). */
export const statements = {
  H272: 'oxidiser, may feed a fire',
  H315: 'irritates skin',
  H318: 'serious eye damage',
  H319: 'serious eye irritation',
  H335: 'may irritate the airways',
  H372: 'harms organs when taken in repeatedly',
} as const;

type StatementCode = keyof typeof statements;

/** Two products that make a poisonous gas together. */
export const BLEACH_GAS = 'Never mix bleach with acid, vinegar or ammonia: the gas is poisonous.';

/** Shown with every powder. */
export const LABEL_FIRST =
  'The label of your own product and local rules come first. Keep powders dry, closed, and away from children, food and acids.';

export const hazards = {
  bicarbonate: { signal: 'none', statements: [], basis: 'memory', cautions: [] },
  carbonate: {
    signal: 'Warning',
    statements: ['H319'],
    basis: 'ghs',
    cautions: [
      'Sodium carbonate dust and strong solution sting eyes: wear eye protection, do not breathe the dust.',
    ],
  },
  'calcium-chloride': {
    signal: 'Warning',
    statements: ['H319'],
    basis: 'ghs',
    cautions: [
      'Calcium chloride gets hot as it dissolves, the anhydrous form very hot: add it slowly to plenty of cold water, never water to the powder, and let it cool.',
      'Wear eye protection and gloves: one safety card (ICSC 1184, anhydrous) warns of severe skin burns and eye damage.',
    ],
  },
  lime: {
    signal: 'Danger',
    statements: ['H315', 'H318', 'H335'],
    basis: 'ghs',
    cautions: [
      'Lime and limewater are caustic: eye protection and gloves, no dust in the air, nothing acid near it. In the eye: rinse with water at once, keep rinsing, and get medical help.',
    ],
  },
  magnesium: { signal: 'none', statements: [], basis: 'memory', cautions: [] },
  'potassium-chloride': { signal: 'none', statements: [], basis: 'memory', cautions: [] },
  'potassium-nitrate': {
    signal: 'Warning',
    statements: ['H272'],
    basis: 'ghs',
    cautions: [
      'Potassium nitrate is an oxidiser: keep it from heat, flames and anything that burns. Buying and keeping it is regulated in some places.',
    ],
  },
  'sodium-nitrate': {
    signal: 'Warning',
    statements: ['H272', 'H319'],
    basis: 'memory',
    cautions: [
      'Sodium nitrate is an oxidiser: keep it from heat, flames and anything that burns, and out of your eyes. Buying and keeping it is regulated in some places.',
    ],
  },
  phosphate: { signal: 'none', statements: [], basis: 'memory', cautions: [] },
  strontium: {
    signal: 'Danger',
    statements: ['H318'],
    basis: 'memory',
    cautions: ['Strontium chloride can damage eyes: wear eye protection.'],
  },
  bromide: {
    signal: 'Warning',
    statements: ['H319'],
    basis: 'memory',
    cautions: [
      'Read the safety data sheet of your bromide before opening it: some warn of harm to fertility and the unborn child. Gloves and eye protection.',
    ],
  },
  iodide: {
    signal: 'Danger',
    statements: ['H372'],
    basis: 'memory',
    cautions: [
      'Iodide acts on the thyroid: do not breathe or swallow it, wash your hands, label the stock bottle.',
    ],
  },
} as const satisfies Record<string, Hazard>;

export type HazardId = keyof typeof hazards;

export function hazard(id: HazardId): Hazard {
  return hazards[id];
}

/** "GHS: Warning. H319 serious eye irritation." with "(from memory)" where no sheet was seen; undefined without one. */
export function hazardLine(id: HazardId): string | undefined {
  const { signal, statements: codes, basis } = hazard(id);
  if (codes.length === 0) return undefined;
  const meanings = codes.map((code) => `${code} ${statements[code]}`).join(', ');
  return `GHS ${signal}: ${meanings}${basis === 'memory' ? ' (from memory)' : ''}.`;
}

/** Every caution for handling a powder, the general one last. */
export function handlingCautions(id: HazardId): readonly string[] {
  const line = hazardLine(id);
  return [...hazard(id).cautions, ...(line === undefined ? [] : [line]), LABEL_FIRST];
}
