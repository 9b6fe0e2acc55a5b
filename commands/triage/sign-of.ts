import type { Sign } from '../../core/care/symptoms/sign.ts';
import type { Judged } from '../../core/water/assess.ts';
import { parameter } from '../../core/water/parameter.ts';

/** What a judged reading is a sign of; undefined where it is fine or at the edge. */
export function signOf({ parameter: id, value, verdict, range: [low] }: Judged): Sign | undefined {
  if (verdict === 'fine' || verdict === 'at the edge') return undefined;
  const isLow = value < low;
  switch (id) {
    case 'salinity':
      return 'salinity off';
    case 'alkalinity':
      return isLow ? 'alkalinity low' : 'alkalinity high';
    case 'temperature':
      return isLow ? 'cold' : 'hot';
    case 'nitrate':
    case 'phosphate':
      if (!isLow) return 'rich';
      return value < parameter(id).kitResolution ? 'zero' : undefined;
    case 'ammonia':
    case 'nitrite':
      return id;
    default:
      return undefined;
  }
}
