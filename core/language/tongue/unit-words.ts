import type { NumberSpan } from '../scan/number-span.ts';

/** Units as they are written in those languages, by the symbol they are read with; no word of two meanings is here. */
const words = {
  L: 'l liter liters litre litres litern litro litros litri litrów litrow litry litra',
  mL: 'ml milliliter millilitre millilitres mililitros mililitri mililitrów',
  gal: 'gal gallon gallons galones galón galões galão galoes gallonen',
  g: 'g gram grams gramm gramme grammes gramo gramos grama gramas grammo grammi gramów gramow gramy',
  kg: 'kg kilogramm kilogramos kilogramas kilogrammi kilogramów',
  ppt: 'ppt psu ‰ promille promil promili',
  SG: 'sg',
  'mS/cm': 'ms ms/cm millisiemens milisiemens',
  'mg/L': 'mg/l ppm',
  dKH: 'dkh °dkh °kh °dh',
  'meq/L': 'meq/l',
  '°C': '°c c',
  '%': '% prozent procent procento porcento',
} as const;
/** Degrees of what: heat, or for alkalinity degrees of hardness. */
const DEGREES =
  '° º grad graden graad grados grado gradi graus grau degrés degré degres degre stopni stopnie grader';

const symbols: ReadonlyMap<string, string> = new Map(
  [...Object.entries(words), ['°', DEGREES] as const].flatMap(([symbol, names]) =>
    names.split(' ').map((name): [string, string] => [name, symbol]),
  ),
);
const UNIT = /\s?(%|‰|°?\p{L}+(?:\/\p{L}+)?|°)(?![\p{L}\d])/uy;
const DIGITS = /[\d.,]*\d/y;

/**
 * The unit right behind a number of a folded text; empty where none is. `°` stands for degrees of any kind. A unit only
 * English has is none here: "in" and "par" are words of other languages.
 */
export function unitOf(text: string, { start }: NumberSpan): string {
  DIGITS.lastIndex = start;
  DIGITS.exec(text);
  UNIT.lastIndex = DIGITS.lastIndex;
  return symbols.get(UNIT.exec(text)?.[1] ?? '') ?? '';
}
