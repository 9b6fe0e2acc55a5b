import { clauseOf } from '../../../core/language/beside.ts';
import type { NamedCoral } from '../../../core/corals/named.ts';
import type { Frame } from '../../../core/language/frame.ts';
import type { SaidPar } from '../../coral/par-verdict.ts';
import { coralsOf, parsOf } from './coral-said.ts';

/** A coral with a light that was said of its spot alone: "two acropora on top where it's 300 PAR". */
export interface LightOfOne {
  readonly coral: NamedCoral;
  readonly par: SaidPar;
}

export function lightsOfOne(frame: Frame): readonly LightOfOne[] {
  const corals = coralsOf(frame);
  return parsOf(frame).flatMap((par) => {
    const coral = corals.find(({ name }) => isSpotOf(frame, name, par.text));
    return coral === undefined ? [] : [{ coral, par }];
  });
}

/** Told behind the coral in one clause, which asks nothing. */
function isSpotOf({ reading: { scanned, said } }: Frame, coral: string, text: string): boolean {
  const number = said.find((one) => one.text === text)?.number;
  const name = scanned.names.find((one) => one.class === 'coral' && one.id === coral);
  if (number === undefined || name === undefined || name.start > number.start) return false;
  const clause = clauseOf(scanned, name);
  return clause.some((token) => token.number === number) && !clause.some(({ word }) => ASKS.has(word));
}

/** Words of a clause that asks: its light is that of the spot asked about. */
const ASKS: ReadonlySet<string> = new Set(['?', 'what', 'which', 'fit', 'can', 'could', 'would', 'beside']);
