import { Problem } from '../../core/problem.ts';
import { fixed, significant } from '../../core/quantity/format.ts';
import { readAlike, readQuantity, type Quantity } from '../../core/quantity/read.ts';
import { say } from '../../core/wording/say.ts';

/** The size a tank is called by and the water it holds, as they were written. */
export interface GlassAndNet {
  /** "50 US gal", or "50" where no unit was said. */
  readonly glass: string;
  readonly net: string;
  /** The numbers alone, in each of `units`. */
  readonly glassText: string;
  readonly netText: string;
  readonly units: readonly string[];
  readonly over: number;
  readonly read: readonly string[];
}

/** Shown side by side where a tank is called by a number alone ("my 50"). */
const BOTH = ['US gal', 'L'] as const;
const BARE = /^\d{1,6}(?:[.,]\d{1,3})?$/;

/** @throws Problem unless the glass is larger than the water in it. */
export function glassAndNet(glass: string, net: string): GlassAndNet {
  const texts = [
    { text: glass, field: 'glass' },
    { text: net, field: 'volume' },
  ];
  const isBare = texts.every(({ text }) => BARE.test(text.trim()));
  const [outer, inner] = isBare
    ? texts.map(({ text, field }) => readQuantity('volume', text, { field, fallback: 'L' }))
    : readAlike('volume', texts);
  if (outer === undefined || inner === undefined) throw new Error('a volume was lost');
  if (!(outer.value > inner.value) || inner.value <= 0) {
    throw new Problem(say('dose.glassHoldsMoreThan'), {
      field: 'glass',
      given: glass,
      limit: say('dose.above', { trim: net.trim() }),
    });
  }
  const notes = [...new Set([...outer.notes, ...inner.notes])];
  const over = outer.value / inner.value;
  if (isBare) {
    const read = 'no unit was said, so both are shown; the percentage is the same in any unit';
    const [glassText, netText] = [outer, inner].map(number) as [string, string];
    return { glass: glassText, net: netText, glassText, netText, units: BOTH, over, read: [read, ...notes] };
  }
  const same = outer.unit === inner.unit && outer.unit !== '' && outer.unit !== 'cm';
  const [glassText, netText] = same ? [number(outer), number(inner)] : [litres(outer), litres(inner)];
  const unit = same ? outer.unit : 'L';
  return {
    glass: `${glassText} ${unit}`,
    net: `${netText} ${unit}`,
    glassText,
    netText,
    units: [unit],
    over,
    read: notes,
  };
}

function number({ written }: Quantity): string {
  return significant(written, 5);
}

function litres({ value }: Quantity): string {
  return fixed(value, 1);
}
