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
  /** What it can do to whoever handles it, the worst first; a line of at most 110 characters each. */
  readonly dangers: readonly string[];
  readonly cautions?: readonly string[];
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

const REGULATED = 'Buying and keeping this salt is regulated in some places.';

export const hazards = {
  bicarbonate: { signal: 'none', statements: [], basis: 'memory', dangers: [] },
  carbonate: {
    signal: 'Warning',
    statements: ['H319'],
    basis: 'ghs',
    dangers: [
      'Sodium carbonate dust and strong solution sting eyes: wear eye protection, do not breathe the dust.',
    ],
  },
  'calcium-chloride': {
    signal: 'Warning',
    statements: ['H319'],
    basis: 'ghs',
    dangers: [
      'Calcium chloride gets hot as it dissolves: slowly into much cold water, never water to the powder; cool it.',
      'Anhydrous it gets very hot and can burn skin and eyes severely (ICSC 1184): eye protection and gloves.',
    ],
  },
  lime: {
    signal: 'Danger',
    statements: ['H315', 'H318', 'H335'],
    basis: 'ghs',
    dangers: [
      'Lime and limewater are caustic: eye protection and gloves, no dust in the air, nothing acid near it.',
      'Lime in the eye: rinse with water at once, keep rinsing, and get medical help.',
    ],
  },
  magnesium: { signal: 'none', statements: [], basis: 'memory', dangers: [] },
  'potassium-chloride': { signal: 'none', statements: [], basis: 'memory', dangers: [] },
  'potassium-nitrate': {
    signal: 'Warning',
    statements: ['H272'],
    basis: 'ghs',
    dangers: ['Potassium nitrate is an oxidiser: keep it from heat, flames and anything that burns.'],
    cautions: [REGULATED],
  },
  'sodium-nitrate': {
    signal: 'Warning',
    statements: ['H272', 'H319'],
    basis: 'memory',
    dangers: [
      'Sodium nitrate is an oxidiser: keep it from heat, flames and anything that burns, and out of your eyes.',
    ],
    cautions: [REGULATED],
  },
  phosphate: { signal: 'none', statements: [], basis: 'memory', dangers: [] },
  strontium: {
    signal: 'Danger',
    statements: ['H318'],
    basis: 'memory',
    dangers: ['Strontium chloride can damage eyes: wear eye protection.'],
  },
  bromide: {
    signal: 'Warning',
    statements: ['H319'],
    basis: 'memory',
    dangers: [
      'Some bromide sheets warn of harm to fertility and the unborn child: gloves and eye protection.',
    ],
    cautions: ['Read the safety data sheet of your bromide before opening it.'],
  },
  iodide: {
    signal: 'Danger',
    statements: ['H372'],
    basis: 'memory',
    dangers: [
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

/** What an answer about a powder warns of: what can hurt, and the remarks, the general one last. */
export function handling(id: HazardId): {
  readonly dangers: readonly string[];
  readonly cautions: readonly string[];
} {
  const { dangers, cautions = [] } = hazard(id);
  const line = hazardLine(id);
  return { dangers, cautions: [...cautions, ...(line === undefined ? [] : [line]), LABEL_FIRST] };
}
