import type { HazardId } from '../care/hazards.ts';
import { clean } from '../quantity/clean.ts';
import { molarMass, type Atoms } from '../quantity/molar-mass.ts';
import type { ParameterId } from '../water/parameter.ts';
import type { Ion } from './ion.ts';

/** A salt that can be dosed. Everything it supplies per gram is computed from its formula in dose.ts, never typed. */
export interface Compound {
  /** Chemical name in plain English; unique. */
  readonly name: string;
  readonly formula: string;
  /** Other words for it, lower case. A word that several compounds list is ambiguous and stays so. */
  readonly names: readonly string[];
  /** Words that need an interpretation, each with the clause that says how it was read. */
  readonly loose?: Readonly<Record<string, string>>;
  /** Atoms of one formula unit, crystal water included. */
  readonly atoms: Atoms;
  /** Crystal water, mol per mol. */
  readonly water: number;
  /** mol of each ion left in the tank by one mol. */
  readonly ions: Partial<Record<Ion, number>>;
  /** Alkalinity, eq per mol: HCO3 and OH count 1, CO3 counts 2, HPO4 counts 1 (dsc07 ch. 2). */
  readonly alkEqPerMol: number;
  /** Dissolved inorganic carbon, mol per mol. */
  readonly dicPerMol: number;
  /** The parameters it is dosed for; what else it raises is a side effect. */
  readonly raises: readonly ParameterId[];
  readonly hazard: HazardId;
  /** Grams in a level teaspoon of 5 mL, least and most: common practice, no source. */
  readonly teaspoonG?: readonly [number, number];
  /** Seldom sold: known where it is named, never offered. */
  readonly isRare?: true;
}

const HYDRATE_SOLD = 'since that is how it is sold';

export const compounds: readonly Compound[] = [
  {
    name: 'sodium bicarbonate',
    formula: 'NaHCO3',
    names: [
      'baking soda',
      'bicarb',
      'bicarbonate',
      'bicarbonate of soda',
      'sodium bicarb',
      'bicarb soda',
      'sodium hydrogencarbonate',
      'sodium hydrogen carbonate',
      'nahco3',
    ],
    atoms: { Na: 1, H: 1, C: 1, O: 3 },
    water: 0,
    ions: { Na: 1 },
    alkEqPerMol: 1,
    dicPerMol: 1,
    raises: ['alkalinity'],
    hazard: 'bicarbonate',
    teaspoonG: [4, 5],
  },
  {
    name: 'sodium carbonate',
    formula: 'Na2CO3',
    names: ['soda ash', 'sodium carbonate anhydrous', 'anhydrous sodium carbonate', 'na2co3', 'washing soda'],
    loose: {
      'baked baking soda': 'read as fully baked; half-baked powder is weaker by the gram',
      'baked soda': 'read as fully baked baking soda; half-baked powder is weaker by the gram',
      ash: 'read as soda ash',
      'baked bicarb': 'read as fully baked; half-baked powder is weaker by the gram',
    },
    atoms: { Na: 2, C: 1, O: 3 },
    water: 0,
    ions: { Na: 2 },
    alkEqPerMol: 2,
    dicPerMol: 1,
    raises: ['alkalinity'],
    hazard: 'carbonate',
    teaspoonG: [2.7, 5.4],
  },
  {
    name: 'sodium carbonate monohydrate',
    formula: 'Na2CO3·H2O',
    names: ['soda ash monohydrate', 'washing soda monohydrate', 'na2co3 h2o'],
    atoms: { Na: 2, C: 1, O: 4, H: 2 },
    water: 1,
    ions: { Na: 2 },
    alkEqPerMol: 2,
    dicPerMol: 1,
    raises: ['alkalinity'],
    hazard: 'carbonate',
    isRare: true,
  },
  {
    name: 'sodium carbonate decahydrate',
    formula: 'Na2CO3·10H2O',
    names: ['soda crystals', 'washing soda crystals', 'na2co3 10h2o', 'washing soda'],
    atoms: { Na: 2, C: 1, O: 13, H: 20 },
    water: 10,
    ions: { Na: 2 },
    alkEqPerMol: 2,
    dicPerMol: 1,
    raises: ['alkalinity'],
    hazard: 'carbonate',
  },
  {
    name: 'calcium chloride anhydrous',
    formula: 'CaCl2',
    names: ['anhydrous calcium chloride', 'calcium chloride', 'cacl2', 'cacl2 anhydrous', 'anhydrous cacl2'],
    atoms: { Ca: 1, Cl: 2 },
    water: 0,
    ions: { Ca: 1, Cl: 2 },
    alkEqPerMol: 0,
    dicPerMol: 0,
    raises: ['calcium'],
    hazard: 'calcium-chloride',
    teaspoonG: [3.5, 5],
  },
  {
    name: 'calcium chloride dihydrate',
    formula: 'CaCl2·2H2O',
    names: ['calcium chloride', 'cacl2', 'cacl2 2h2o', 'cacl2 dihydrate'],
    atoms: { Ca: 1, Cl: 2, H: 4, O: 2 },
    water: 2,
    ions: { Ca: 1, Cl: 2 },
    alkEqPerMol: 0,
    dicPerMol: 0,
    raises: ['calcium'],
    hazard: 'calcium-chloride',
    teaspoonG: [3.5, 5],
  },
  {
    name: 'calcium chloride hexahydrate',
    formula: 'CaCl2·6H2O',
    names: ['calcium chloride', 'cacl2', 'cacl2 6h2o', 'cacl2 hexahydrate'],
    atoms: { Ca: 1, Cl: 2, H: 12, O: 6 },
    water: 6,
    ions: { Ca: 1, Cl: 2 },
    alkEqPerMol: 0,
    dicPerMol: 0,
    raises: ['calcium'],
    hazard: 'calcium-chloride',
    teaspoonG: [3.5, 5],
  },
  {
    name: 'calcium hydroxide',
    formula: 'Ca(OH)2',
    names: [
      'limewater powder',
      'limewater',
      'slaked lime',
      'hydrated lime',
      'pickling lime',
      'caoh2',
      'ca oh 2',
    ],
    loose: {
      kalkwasser: 'read as calcium hydroxide powder',
      kalk: 'read as calcium hydroxide powder',
      lime: 'read as slaked lime; quicklime is another and more dangerous powder and has no place here',
    },
    atoms: { Ca: 1, O: 2, H: 2 },
    water: 0,
    ions: { Ca: 1 },
    alkEqPerMol: 2,
    dicPerMol: 0,
    raises: ['alkalinity'],
    hazard: 'lime',
    teaspoonG: [2.5, 3.5],
  },
  {
    name: 'magnesium chloride hexahydrate',
    formula: 'MgCl2·6H2O',
    names: ['mgcl2 6h2o', 'mgcl2 hexahydrate'],
    loose: {
      'magnesium chloride': `read as the hexahydrate, ${HYDRATE_SOLD}`,
      mgcl2: `read as the hexahydrate, ${HYDRATE_SOLD}`,
    },
    atoms: { Mg: 1, Cl: 2, H: 12, O: 6 },
    water: 6,
    ions: { Mg: 1, Cl: 2 },
    alkEqPerMol: 0,
    dicPerMol: 0,
    raises: ['magnesium'],
    hazard: 'magnesium',
  },
  {
    name: 'magnesium sulfate heptahydrate',
    formula: 'MgSO4·7H2O',
    names: ['epsom salt', 'epsom salts', 'epsom', 'mgso4 7h2o', 'magnesium sulphate heptahydrate'],
    loose: {
      'magnesium sulfate': `read as the heptahydrate (Epsom salt), ${HYDRATE_SOLD}`,
      'magnesium sulphate': `read as the heptahydrate (Epsom salt), ${HYDRATE_SOLD}`,
      mgso4: `read as the heptahydrate (Epsom salt), ${HYDRATE_SOLD}`,
    },
    atoms: { Mg: 1, S: 1, O: 11, H: 14 },
    water: 7,
    ions: { Mg: 1, SO4: 1 },
    alkEqPerMol: 0,
    dicPerMol: 0,
    raises: ['magnesium'],
    hazard: 'magnesium',
  },
  {
    name: 'potassium chloride',
    formula: 'KCl',
    names: ['kcl'],
    atoms: { K: 1, Cl: 1 },
    water: 0,
    ions: { K: 1, Cl: 1 },
    alkEqPerMol: 0,
    dicPerMol: 0,
    raises: ['potassium'],
    hazard: 'potassium-chloride',
  },
  {
    name: 'sodium nitrate',
    formula: 'NaNO3',
    names: ['nano3'],
    atoms: { Na: 1, N: 1, O: 3 },
    water: 0,
    ions: { Na: 1, NO3: 1 },
    alkEqPerMol: 0,
    dicPerMol: 0,
    raises: ['nitrate'],
    hazard: 'sodium-nitrate',
  },
  {
    name: 'potassium nitrate',
    formula: 'KNO3',
    names: ['kno3', 'saltpetre', 'saltpeter'],
    atoms: { K: 1, N: 1, O: 3 },
    water: 0,
    ions: { K: 1, NO3: 1 },
    alkEqPerMol: 0,
    dicPerMol: 0,
    raises: ['nitrate'],
    hazard: 'potassium-nitrate',
  },
  {
    name: 'monosodium phosphate',
    formula: 'NaH2PO4',
    names: [
      'nah2po4',
      'sodium dihydrogen phosphate',
      'monosodium phosphate anhydrous',
      'monobasic sodium phosphate',
    ],
    atoms: { Na: 1, H: 2, P: 1, O: 4 },
    water: 0,
    ions: { Na: 1, PO4: 1 },
    alkEqPerMol: 0,
    dicPerMol: 0,
    raises: ['phosphate'],
    hazard: 'phosphate',
  },
  {
    name: 'disodium phosphate',
    formula: 'Na2HPO4',
    names: [
      'na2hpo4',
      'disodium hydrogen phosphate',
      'disodium phosphate anhydrous',
      'dibasic sodium phosphate',
    ],
    atoms: { Na: 2, H: 1, P: 1, O: 4 },
    water: 0,
    ions: { Na: 2, PO4: 1 },
    alkEqPerMol: 1,
    dicPerMol: 0,
    raises: ['phosphate'],
    hazard: 'phosphate',
  },
  {
    name: 'monopotassium phosphate',
    formula: 'KH2PO4',
    names: ['kh2po4', 'potassium dihydrogen phosphate', 'monobasic potassium phosphate'],
    atoms: { K: 1, H: 2, P: 1, O: 4 },
    water: 0,
    ions: { K: 1, PO4: 1 },
    alkEqPerMol: 0,
    dicPerMol: 0,
    raises: ['phosphate'],
    hazard: 'phosphate',
  },
  {
    name: 'strontium chloride hexahydrate',
    formula: 'SrCl2·6H2O',
    names: ['srcl2 6h2o', 'srcl2 hexahydrate'],
    loose: {
      'strontium chloride': `read as the hexahydrate, ${HYDRATE_SOLD}`,
      srcl2: `read as the hexahydrate, ${HYDRATE_SOLD}`,
    },
    atoms: { Sr: 1, Cl: 2, H: 12, O: 6 },
    water: 6,
    ions: { Sr: 1, Cl: 2 },
    alkEqPerMol: 0,
    dicPerMol: 0,
    raises: ['strontium'],
    hazard: 'strontium',
  },
  {
    name: 'sodium bromide',
    formula: 'NaBr',
    names: ['nabr'],
    atoms: { Na: 1, Br: 1 },
    water: 0,
    ions: { Na: 1, Br: 1 },
    alkEqPerMol: 0,
    dicPerMol: 0,
    raises: ['bromide'],
    hazard: 'bromide',
  },
  {
    name: 'potassium iodide',
    formula: 'KI',
    names: ['ki'],
    atoms: { K: 1, I: 1 },
    water: 0,
    ions: { K: 1, I: 1 },
    alkEqPerMol: 0,
    dicPerMol: 0,
    raises: ['iodine'],
    hazard: 'iodide',
  },
];

/** Molar mass of a compound with its crystal water, g/mol (iupac21). MgSO4·7H2O -> 246.466. */
export function compoundMolarMass(compound: Compound): number {
  return molarMass(compound.atoms);
}

/** The compounds dosed for a parameter, in the order they are offered. */
export function compoundsFor(parameter: ParameterId): readonly Compound[] {
  return compounds.filter(({ raises, isRare }) => isRare !== true && raises.includes(parameter));
}

/** Names offered while a member types: each chemical name and its first everyday one. */
export function compoundNames(): readonly string[] {
  const offered = compounds.filter(({ isRare }) => isRare !== true);
  const everyday = offered.flatMap(({ names }) => names.slice(0, 1)).filter((name) => !/\d/.test(name));
  return [...new Set([...offered.map(({ name }) => name), ...everyday])];
}

/** Words that say nothing about which salt it is. */
const FILLER =
  /\b(?:powder|powdered|flakes?|prills?|pellets?|granules|crystals|pure|food grade|some|my|the|oven)\b/g;

/**
 * The compound a text names: one, several when the word does not say which form ("calcium chloride" is anhydrous,
 * dihydrate or hexahydrate), or undefined.
 */
export function findCompound(text: string): Compound | readonly Compound[] | undefined {
  const wanted = spelling(text);
  const found = byWord.get(wanted) ?? byWord.get(spelling(wanted.replace(FILLER, ' ')));
  return found?.length === 1 ? found[0] : found;
}

/** Every form a name may mean; none for a word that names no compound. */
export function formsOf(text: string): readonly Compound[] {
  const found = findCompound(text);
  if (found === undefined) return [];
  return 'name' in found ? [found] : found;
}

/** How a loose word was read, as a clause; undefined where nothing had to be interpreted. */
export function compoundNote(text: string, compound: Compound): string | undefined {
  const loose = compound.loose ?? {};
  return loose[spelling(text)] ?? loose[spelling(spelling(text).replace(FILLER, ' '))];
}

/** Lower case, every mark a space: "Ca(OH)₂" and "ca oh 2" are the same text. */
function spelling(text: string): string {
  return clean(text)
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();
}

/** Every word for a compound, with the compounds it can mean. */
const byWord = compoundsByWord();

function compoundsByWord(): ReadonlyMap<string, readonly Compound[]> {
  const map = new Map<string, readonly Compound[]>();
  for (const compound of compounds) {
    const { name, names, loose = {}, formula } = compound;
    for (const word of new Set([name, spelling(formula), ...names, ...Object.keys(loose)])) {
      map.set(word, [...(map.get(word) ?? []), compound]);
    }
  }
  return map;
}
