import { findParameter } from '../core/water/parameter.ts';
import type { Answer } from './answer.ts';
import type { Command, Context } from './command.ts';
import { leftOut, type Found } from './fill.ts';
import type { Keep, PreferredUnits } from './keep.ts';
import { optionsOf, type Option } from './options.ts';
import type { Server } from './server.ts';

type Input = Readonly<Record<string, unknown>>;

/** An input with what the tank in use filled in, and the sentences that say so. */
export interface Filled {
  readonly input: Input;
  readonly read: readonly string[];
  /** Whether only the asker may see the answer: known before the command runs. */
  readonly hidden: boolean;
}

/** Options that hold a reading of the parameter named in `of`. */
const READINGS = new Set(['now', 'goal', 'before', 'fresh']);

/**
 * Fills in from the tank in use what the member left out, and gives a bare number the unit they prefer, or else that of
 * the server. What they typed themselves always wins. Nothing of the member's goes into an answer by another way than
 * this and the commands about their own tanks, so an answer with `read` lines about their tank is for them alone.
 */
export function withDefaults(
  command: Command,
  input: Input,
  keep: Keep | undefined,
  server?: Pick<Server, 'settings'>,
): Filled {
  const tank = keep?.tankInUse();
  const inside = (tank !== undefined || input['tank'] !== undefined) && looksInside(command, input);
  const common = server?.settings().units ?? {};
  if (tank === undefined && Object.keys(common).length === 0) {
    return { input, read: [], hidden: command.private || inside };
  }
  const filled: Record<string, unknown> = { ...input };
  const read: string[] = [];
  let own = inside;
  for (const option of optionsOf(command.options)) {
    const given = input[option.name];
    const kind = bareKind(option, given, input['of']);
    const left = given === undefined && !isBatch(command, input) ? option.fill : undefined;
    const ofTank =
      keep === undefined || tank === undefined
        ? undefined
        : (leftOut(left, tank, keep) ?? inUnit(given, kind && tank.units[kind], 'your preferred unit'));
    const found = ofTank ?? inUnit(given, kind && common[kind], "this server's unit");
    if (found === undefined) continue;
    filled[option.name] = found.value;
    read.push(found.read);
    own ||= found === ofTank;
  }
  return { input: filled, read, hidden: command.private || own };
}

/** Runs a command with the tank's defaults; the answer begins with what was filled in. */
export function runWithDefaults(command: Command, input: Input, context: Context): Answer {
  return runFilled(command, withDefaults(command, input, context.keep, context.server), context);
}

/** Runs a command whose defaults are filled in already. */
export function runFilled(command: Command, { input, read }: Filled, context: Context): Answer {
  const given = command.run(input, context);
  return read.length === 0 ? given : { ...given, read: [...read, ...given.read] };
}

/** Commands that look into the tank in use by themselves: plain words, daily use from the log, corals and their light. */
function looksInside(command: Command, input: Input): boolean {
  const name = command.path.join(' ');
  if (name === 'dose use') return input['before'] === undefined || input['now'] === undefined;
  if (name === 'light range') return input['at'] !== undefined || input['tank'] !== undefined;
  return name === 'ask' || name === 'coral suited' || name === 'coral growth';
}

/** Limewater without a daily use to cover is a batch in a vessel, whatever tank there is. */
function isBatch(command: Command, input: Input): boolean {
  return command.path.join(' ') === 'dose limewater' && input['goal'] === undefined;
}

/** What a number without a unit measures, where members and servers can prefer a unit for it. */
function bareKind({ name, quantity }: Option, given: unknown, of: unknown): keyof PreferredUnits | undefined {
  if (typeof given !== 'string' || !/^[\d.,\s]+$/.test(given.trim())) return undefined;
  if (quantity === 'volume' || quantity === 'temperature') return quantity;
  const isAlkalinity = READINGS.has(name) && typeof of === 'string' && findParameter(of) === 'alkalinity';
  return isAlkalinity ? 'alkalinity' : undefined;
}

function inUnit(given: unknown, unit: string | undefined, whose: string): Found | undefined {
  if (unit === undefined) return undefined;
  const number = String(given).trim();
  return { value: `${number} ${unit}`, read: `${number} read in ${whose}, ${unit}` };
}
