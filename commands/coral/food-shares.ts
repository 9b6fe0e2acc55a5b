import { foods, foodsBasis, type Food, type FoodShares } from '../../core/corals/feeding.ts';
import { Problem } from '../../core/problem.ts';
import { fixed } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { say } from '../../core/wording/say.ts';

export const foodKinds = ['frozen', 'flake', 'pellet'] as const satisfies readonly Food[];

/** What a food is made of, by its kind or its label. */
export interface AskedFood {
  readonly shares: FoodShares;
  readonly read: readonly string[];
}

/** A label's shares are of the whole food as sold; what it does not give is taken by the kind of food. */
export function askedFood(
  kind: Food,
  protein: string | undefined,
  phosphorus: string | undefined,
): AskedFood {
  const usual = foods[kind];
  const [proteinShare, phosphorusShare] = [
    share('protein', protein, MOST_PROTEIN),
    share('phosphorus', phosphorus, MOST_PHOSPHORUS),
  ];
  const whole = (part: 'proteinOfDry' | 'phosphorusOfDry') => ({
    low: usual.dry.low * usual[part].low,
    high: usual.dry.high * usual[part].high,
  });
  const shares = {
    dry: { low: 1, high: 1 },
    proteinOfDry: proteinShare ?? whole('proteinOfDry'),
    phosphorusOfDry: phosphorusShare ?? whole('phosphorusOfDry'),
  };
  return {
    shares,
    read: [
      shareLine('protein', shares.proteinOfDry, proteinShare !== undefined),
      shareLine('phosphorus', shares.phosphorusOfDry, phosphorusShare !== undefined),
    ],
  };
}

function shareLine(name: string, span: { low: number; high: number }, label: boolean): string {
  return `${name}: ${range(span)} % of the food (${label ? 'from the label' : foodsBasis})`;
}

/** Per cent of the food: no food is all protein, and no feed holds more phosphorus than bone meal (from memory). */
const MOST_PROTEIN = 90;
const MOST_PHOSPHORUS = 12;

function share(
  field: string,
  given: string | undefined,
  most: number,
): { low: number; high: number } | undefined {
  if (given === undefined) return undefined;
  const { value } = readQuantity('share', given, { field });
  if (value > most) {
    throw new Problem(say('coral.noSuchFood', { share: fixed(value, 1), field }), {
      field,
      given,
      limit: say('coral.limitShare', { most: String(most) }),
    });
  }
  return { low: value / 100, high: value / 100 };
}

function range({ low, high }: { low: number; high: number }): string {
  const [from, to] = [fixed(low * 100, 1), fixed(high * 100, 1)];
  return from === to ? from : `${from} to ${to}`;
}
