import { urgentIds } from '../core/care/urgent/cards.ts';
import { coralById } from '../core/corals/coral-list.ts';
import { coralNames, findCorals } from '../core/corals/find.ts';
import { compoundNames, compoundsFor, formsOf } from '../core/dosing/compound.ts';
import { inUnit } from '../core/quantity/format.ts';
import { clean } from '../core/quantity/clean.ts';
import { Problem } from '../core/problem.ts';
import { readQuantity } from '../core/quantity/read.ts';
import { definitionOf, type QuantityKind } from '../core/quantity/unit.ts';
import { limitsOf } from '../core/water/limits.ts';
import { findParameter, parameter, parameterIds, type ParameterId } from '../core/water/parameter.ts';
import { tellingName } from './coral/asked-kind.ts';
import { numbered } from './coral/asked-placed.ts';
import type { Command } from './command.ts';
import type { Keep } from './keep.ts';
import { nameOf } from './named.ts';
import type { Option } from './options.ts';
import { named } from './remind/times.ts';
import { mixes, waste } from './waterchange/level.ts';
import { matchingZones } from './zone.ts';

/** At most this many are offered at once. */
const MOST = 25;

/** Who is offered values, and what there is. */
export interface Offered {
  /** The asker's own: the names of their tanks and their reminders come from there. */
  readonly keep?: Keep | undefined;
  /** Those there is help for. */
  readonly commands?: readonly Command[];
  /** The other options as far as they are filled in. */
  readonly input?: Readonly<Record<string, string>>;
  /** BCP 47 tag of the asker. */
  readonly locale?: string | undefined;
}

/** Complete values for an option that begin with, or contain, what is typed so far. */
export function suggest(
  option: Option,
  typed: string,
  { keep, commands = [], locale, input = {} }: Offered = {},
): readonly string[] {
  if (option.choices !== undefined) return matching(option.choices, typed);
  const tanks = keep?.tanks() ?? [];
  switch (option.suggest) {
    case 'parameter':
    case 'dosed':
    case 'mixed':
    case 'paced':
    case 'waste':
      return matching(parametersOf(option.suggest), typed);
    case 'compound':
      return matching(compoundsOf(input), typed);
    case 'tank':
      return matching(
        tanks.map(({ name }) => name),
        typed,
      );
    case 'command':
      return matching(commands.map(nameOf), typed);
    case 'emergency':
      return matching([...urgentIds], typed);
    case 'zone':
      return matchingZones(typed, locale).slice(0, MOST);
    case 'reminder':
      return matching((keep?.reminders() ?? []).map(named), typed);
    case 'coral':
      return corals(typed, keep, Object.values(input));
    case 'placed':
      return matching(placed(keep), typed);
    case 'unit':
      return [...ownVolume(option, typed, keep), ...withUnits(option, typed)];
    default:
      return [];
  }
}

const ACCEPTED: Readonly<
  Record<'parameter' | 'dosed' | 'mixed' | 'paced' | 'waste', (id: ParameterId) => boolean>
> = {
  parameter: () => true,
  dosed: (id) => compoundsFor(id).length > 0,
  mixed: mixes,
  waste: (id) => waste.has(id),
  paced: (id) => limitsOf(id).pace !== undefined,
};

function parametersOf(list: keyof typeof ACCEPTED): readonly string[] {
  return parameterIds.filter(ACCEPTED[list]).map((id) => parameter(id).label);
}

/** Those that raise what `of` names, or what a salt in another option raises; none that such an option holds already. */
function compoundsOf(input: Readonly<Record<string, string>>): readonly string[] {
  const { of, ...others } = input;
  const given = Object.values(others).flatMap((text) => formsOf(text));
  const asked = of === undefined ? undefined : findParameter(of);
  const wanted = asked === undefined ? given.flatMap(({ raises }) => raises) : [asked];
  const taken = new Set(given.map(({ name }) => name));
  return compoundNames().filter((name) => {
    const forms = formsOf(name).filter((one) => !taken.has(one.name));
    return forms.some(({ raises }) => wanted.length === 0 || raises.some((id) => wanted.includes(id)));
  });
}

/** The net water of the tank in use, for an option that takes that where nothing is typed. */
function ownVolume({ fill }: Option, typed: string, keep: Keep | undefined): readonly string[] {
  const tank = fill === 'volume' && typed.trim() === '' ? keep?.tankInUse() : undefined;
  return tank === undefined ? [] : [inUnit('volume', tank.netVolumeL, tank.units.volume ?? 'L', 1)];
}

/** Names that hold what is typed, else what it leads to however it is spelt. */
function corals(typed: string, keep: Keep | undefined, others: readonly string[]): readonly string[] {
  const taken = new Set(others.map(idOfCoral).filter((id) => id !== undefined));
  const isFree = (name: string): boolean => !taken.has(idOfCoral(name) ?? '');
  const all = [...new Set([...ownKinds(keep), ...coralNames()])].filter(
    (name) => taken.size === 0 || isFree(name),
  );
  const begun = matching(all, typed);
  const found = findCorals(typed);
  const entries =
    found.kind === 'one' ? [found.entry] : found.kind === 'several' ? found.entries : found.near;
  const led = entries.map(tellingName).filter((name) => !begun.includes(name) && isFree(name));
  return [...begun, ...led].slice(0, MOST);
}

/** The corals of the tank in use. */
function placed(keep: Keep | undefined): readonly string[] {
  const tank = keep?.tankInUse();
  return keep === undefined || tank === undefined ? [] : keep.corals(tank.id).map(numbered);
}

/** The one kind a name can only mean. */
function idOfCoral(name: string): string | undefined {
  const found = findCorals(name);
  return found.kind === 'one' ? found.entry.id : undefined;
}

/** What the corals of the tank in use are. */
function ownKinds(keep: Keep | undefined): readonly string[] {
  const tank = keep?.tankInUse();
  const kept = keep === undefined || tank === undefined ? [] : keep.corals(tank.id);
  return kept
    .map(({ coralId }) => coralById(coralId))
    .filter((entry) => entry !== undefined)
    .map(tellingName);
}

function matching(all: readonly string[], typed: string): readonly string[] {
  const wanted = clean(typed);
  const starts = all.filter((value) => clean(value).startsWith(wanted));
  const contains = all.filter((value) => !starts.includes(value) && clean(value).includes(wanted));
  return [...starts, ...contains].slice(0, MOST);
}

/** Whether so much of a kind is ever accepted. */
function isReadable(kind: QuantityKind, value: string): boolean {
  try {
    readQuantity(kind, value, { field: 'value' });
    return true;
  } catch (error) {
    if (error instanceof Problem) return error.choices.length > 0;
    throw error;
  }
}

/** "75" -> "75 L", "75 US gal", ...; "75 g" -> those whose unit begins with g. */
function withUnits(option: Option, typed: string): readonly string[] {
  const found = /^(.*[\d)%])\s*([^\d()%]*)$/.exec(typed.trim());
  const { quantity } = option;
  if (found === null || quantity === undefined) return [];
  const [, number = '', begun = ''] = found;
  const units = definitionOf(quantity).units;
  const fitting = units.filter((unit) =>
    [unit.symbol.toLowerCase(), ...unit.names].some((name) => name.startsWith(clean(begun))),
  );
  const symbols = [...new Set(fitting.map((unit) => unit.symbol))].filter((symbol) => symbol !== '');
  return symbols
    .map((symbol) => `${number} ${symbol}`)
    .filter((value) => value.length <= 100 && isReadable(quantity, value))
    .slice(0, MOST);
}
