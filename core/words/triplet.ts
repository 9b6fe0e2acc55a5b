/** Calcium (mg/L), alkalinity (dKH) and magnesium (mg/L) as they are written in one. */
export interface Triplet {
  readonly calcium: number;
  readonly alkalinity: number;
  readonly magnesium: number;
}

const TRIPLET = /(?<![\d/.])(\d{1,4}(?:[.,]\d+)?)\/(\d{1,4}(?:[.,]\d+)?)\/(\d{3,4})(?![\d/])/g;

/**
 * "450/9.5/1350" and "9.5/450/1350": calcium, alkalinity and magnesium in either order, told apart by magnitude
 * (calcium 300-600 mg/L, alkalinity 4-16 dKH, magnesium 900-1700 mg/L).
 */
function tripletOf(parts: readonly string[]): Triplet | undefined {
  const numbers = parts.map((part) => Number(part.replace(',', '.')));
  const pick = (low: number, high: number): number | undefined => numbers.find((n) => n >= low && n <= high);
  const [calcium, alkalinity, magnesium] = [pick(300, 600), pick(4, 16), pick(900, 1700)];
  if (calcium === undefined || alkalinity === undefined || magnesium === undefined) return undefined;
  return { calcium, alkalinity, magnesium };
}

/** A text with its triplets rewritten as named readings. */
export function withTriplets(text: string): string {
  return text.replace(TRIPLET, (whole, ...parts: readonly string[]) => {
    const found = tripletOf(parts.slice(0, 3));
    return found === undefined
      ? whole
      : ` calcium ${found.calcium} alkalinity ${found.alkalinity} dkh magnesium ${found.magnesium} `;
  });
}

/** The first triplet of a text. */
export function tripletIn(text: string): Triplet | undefined {
  for (const [, ...parts] of text.matchAll(TRIPLET)) {
    const found = tripletOf(parts);
    if (found !== undefined) return found;
  }
  return undefined;
}
