import type { z } from 'zod';
import { findParameter } from '../core/water/parameter.ts';
import type { Answer } from './answer.ts';
import {
  withoutKeep,
  type Asking,
  type Command,
  type CommandOf,
  type OptionsSchema,
  type RawInput,
} from './command.ts';
import { leftOut, type Found } from './fill.ts';
import { firstChosen, type ChosenUnits } from '../core/quantity/chosen-units.ts';
import { optionsOf, type Option } from './options.ts';

/** An input with what the tank in use filled in, and the sentences that say so. */
export interface Filled {
  readonly input: RawInput;
  readonly read: readonly string[];
  /** Which unit a bare number was given. */
  readonly units: readonly string[];
  /** Whether only the asker may see the answer: known before the command runs. */
  readonly hidden: boolean;
}

/** Options that hold a reading of the parameter named in `of`. */
const READINGS = new Set(['now', 'goal', 'before', 'fresh']);

/**
 * Fills in from the tank in use what the member left out, and gives a bare number the unit they prefer, or else that of
 * the server. What they typed themselves always wins. Nothing of the member's reaches a public run by another way, and
 * what was filled in makes the answer one for them alone.
 */
export function withDefaults(command: Command, input: RawInput, asking: Asking): Filled {
  const { keep, server } = asking;
  const tank = keep?.tankInUse();
  const chosen = firstChosen(tank?.units, keep?.units() ?? asking.units);
  const common = server?.settings().units ?? {};
  const inside = command.isOwn(input, asking);
  const filled: Record<string, unknown> = { ...input };
  const read: string[] = [];
  const units: string[] = [];
  let own = inside;
  for (const option of optionsOf(command.options)) {
    const given = input[option.name];
    const kind = bareKind(option, given, input['of']);
    const left = given === undefined && command.fills(input) ? option.fill : undefined;
    const kept = keep === undefined || tank === undefined ? undefined : leftOut(left, tank, keep);
    const ownUnit = inUnit(given, kind && chosen[kind], 'your preferred unit');
    const ofUnit = ownUnit ?? inUnit(given, kind && common[kind], "this server's unit");
    const found = kept ?? ofUnit;
    if (found === undefined) continue;
    filled[option.name] = found.value;
    (found === kept ? read : units).push(found.read);
    own ||= found === kept || found === ownUnit;
  }
  return { input: filled, read, units, hidden: own };
}

/** Runs a command with the tank's defaults; the answer begins with what was filled in. */
export function runWithDefaults(command: Command, input: RawInput, asking: Asking): Answer {
  return runFilled(command, withDefaults(command, input, asking), asking);
}

/** The same with an input of ours: an option that there is not, or a value it does not take, does not compile. */
export function answerOf<S extends OptionsSchema>(
  command: CommandOf<S>,
  input: z.input<S>,
  asking: Asking,
): Answer {
  return runWithDefaults(command, givenOf(input), asking);
}

/** The options of an input that were given. */
export function givenOf(input: object): RawInput {
  return Object.fromEntries(Object.entries(input).filter(([, value]) => value !== undefined));
}

/** Runs a command whose defaults are filled in already; what others may read is made without the asker's keep. */
export function runFilled(command: Command, { input, read, units, hidden }: Filled, asking: Asking): Answer {
  const given = command.run(input, hidden || command.sharing ? asking : withoutKeep(asking));
  return read.length + units.length === 0 ? given : { ...given, read: [...read, ...given.read, ...units] };
}

/** What a number without a unit measures, where members and servers can prefer a unit for it. */
function bareKind({ name, quantity }: Option, given: unknown, of: unknown): keyof ChosenUnits | undefined {
  if (typeof given !== 'string' || !/^[\d.,\s]+$/.test(given.trim())) return undefined;
  if (quantity === 'volume' || quantity === 'temperature' || quantity === 'length') return quantity;
  const isAlkalinity = READINGS.has(name) && typeof of === 'string' && findParameter(of) === 'alkalinity';
  return isAlkalinity ? 'alkalinity' : undefined;
}

function inUnit(given: unknown, unit: string | undefined, whose: string): Found | undefined {
  if (unit === undefined) return undefined;
  const number = String(given).trim();
  return { value: `${number} ${unit}`, read: `${number} read in ${whose}, ${unit}` };
}
