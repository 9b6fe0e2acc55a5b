import { urgentIds } from '../core/care/urgent/cards.ts';
import { coralNames, findCorals } from '../core/corals/find.ts';
import { compoundNames } from '../core/dosing/compound.ts';
import { clean } from '../core/quantity/clean.ts';
import { definitionOf } from '../core/quantity/unit.ts';
import { parameter, parameterIds } from '../core/water/parameter.ts';
import { tellingName } from './coral/asked-kind.ts';
import { numbered } from './coral/asked-placed.ts';
import type { Command } from './command.ts';
import type { Keep } from './keep.ts';
import { nameOf } from './named.ts';
import type { Option } from './options.ts';
import { named } from './remind/times.ts';
import { matchingZones } from './zone.ts';

/** At most this many are offered at once. */
const MOST = 25;

/** Who is offered values, and what there is. */
export interface Offered {
  /** The asker's own: the names of their tanks and their reminders come from there. */
  readonly keep?: Keep | undefined;
  /** Those there is help for. */
  readonly commands?: readonly Command[];
  /** BCP 47 tag of the asker. */
  readonly locale?: string | undefined;
}

/** Complete values for an option that begin with, or contain, what is typed so far. */
export function suggest(
  option: Option,
  typed: string,
  { keep, commands = [], locale }: Offered = {},
): readonly string[] {
  if (option.choices !== undefined) return matching(option.choices, typed);
  if (option.suggest === 'parameter')
    return matching(
      parameterIds.map((id) => parameter(id).label),
      typed,
    );
  if (option.suggest === 'compound') return matching(compoundNames(), typed);
  if (option.suggest === 'tank')
    return matching(
      (keep?.tanks() ?? []).map(({ name }) => name),
      typed,
    );
  if (option.suggest === 'command') return matching(commands.map(nameOf), typed);
  if (option.suggest === 'emergency') return matching([...urgentIds], typed);
  if (option.suggest === 'zone') return matchingZones(typed, locale).slice(0, MOST);
  if (option.suggest === 'reminder') return matching((keep?.reminders() ?? []).map(named), typed);
  if (option.suggest === 'coral') return corals(typed);
  if (option.suggest === 'placed') return matching(placed(keep), typed);
  if (option.suggest === 'unit' && option.quantity !== undefined) return withUnits(option, typed);
  return [];
}

/** Names that hold what is typed, else what it leads to however it is spelt. */
function corals(typed: string): readonly string[] {
  const begun = matching(coralNames(), typed);
  const found = findCorals(typed);
  const entries =
    found.kind === 'one' ? [found.entry] : found.kind === 'several' ? found.entries : found.near;
  const led = entries.map(tellingName).filter((name) => !begun.includes(name));
  return [...begun, ...led].slice(0, MOST);
}

/** The corals of the tank in use. */
function placed(keep: Keep | undefined): readonly string[] {
  const tank = keep?.tankInUse();
  return keep === undefined || tank === undefined ? [] : keep.corals(tank.id).map(numbered);
}

function matching(all: readonly string[], typed: string): readonly string[] {
  const wanted = clean(typed);
  const starts = all.filter((value) => clean(value).startsWith(wanted));
  const contains = all.filter((value) => !starts.includes(value) && clean(value).includes(wanted));
  return [...starts, ...contains].slice(0, MOST);
}

/** "75" -> "75 L", "75 US gal", ...; "75 g" -> those whose unit begins with g. */
function withUnits(option: Option, typed: string): readonly string[] {
  const found = /^(.*[\d)%])\s*([^\d()%]*)$/.exec(typed.trim());
  if (found === null || option.quantity === undefined) return [];
  const [, number = '', begun = ''] = found;
  const units = definitionOf(option.quantity).units;
  const fitting = units.filter((unit) =>
    [unit.symbol.toLowerCase(), ...unit.names].some((name) => name.startsWith(clean(begun))),
  );
  const symbols = [...new Set(fitting.map((unit) => unit.symbol))].filter((symbol) => symbol !== '');
  return symbols
    .map((symbol) => `${number} ${symbol}`)
    .filter((value) => value.length <= 100)
    .slice(0, MOST);
}
