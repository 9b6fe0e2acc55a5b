import { Problem } from '../../problem.ts';
import { readQuantity } from '../../quantity/read.ts';
import { quantityText, type NumberSpan } from '../../language/scan/number-span.ts';
import { scan } from '../../language/tokens.ts';

/** Kinds of numbers that a label may hold: "40 L (10 gal)", "8 to 14 days", "150 cm (5 ft)". */
const KINDS = ['volume', 'days', 'length'] as const;
type Measured = (typeof KINDS)[number];

/** A span in the canonical unit of its kind; `from` 0 for "up to 40 L", `to` infinite for "200 L or more". */
export interface Span {
  readonly kind: Measured;
  readonly from: number;
  readonly to: number;
}

/** Furthest a number may lie outside a span, as a ratio, and still be near it. Own choice. */
const NEAR = 1.3;

/** The spans of volume, time and length in a text, in order. */
export function spansIn(text: string): readonly Span[] {
  const { text: folded, numbers } = scan(text);
  return numbers.flatMap((number, at) => {
    const kind = KINDS.find((each) => each === number.kinds[0]);
    const to = kind === undefined ? undefined : valueOf(kind, number);
    if (kind === undefined || to === undefined) return [];
    const before = numbers[at - 1];
    const isRange = before?.unit === '' && /^\s*(?:to|-)\s*$/.test(folded.slice(before.end, number.start));
    const from = isRange ? (valueOf(kind, { ...before, unit: number.unit }) ?? to) : to;
    if (/\b(?:up to|under|below|less than)\s*$/.test(folded.slice(0, number.start)))
      return [{ kind, from: 0, to }];
    const isOpen = /^\s*(?:\([^)]*\)\s*)?(?:or more|up\b|and more)/.test(folded.slice(number.end));
    return [
      {
        kind,
        from,
        to: isOpen || /\b(?:above|over)\s*$/.test(folded.slice(0, number.start)) ? Infinity : to,
      },
    ];
  });
}

/** 1 where a number asked lies in a span told, less down to 0 the further it lies outside. */
export function nearness(asked: readonly Span[], told: readonly Span[]): number {
  const ratios = asked.flatMap((one) =>
    told
      .filter(({ kind }) => kind === one.kind)
      .map(({ from, to }) => Math.max(one.to / to, from / one.to, 1)),
  );
  const least = Math.min(...ratios, NEAR);
  return (NEAR - least) / (NEAR - 1);
}

function valueOf(kind: Measured, number: NumberSpan): number | undefined {
  try {
    return readQuantity(kind, quantityText(number), { field: kind }).value;
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}
