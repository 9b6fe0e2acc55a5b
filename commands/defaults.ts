import { findParameter } from '../core/water/parameter.ts';
import type { Answer } from './answer.ts';
import type { Command, Context } from './command.ts';
import { leftOut, type Found } from './fill.ts';
import type { Keep, Tank } from './keep.ts';
import { optionsOf, type Option } from './options.ts';

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
 * Fills in from the tank in use what the member left out, and gives a bare number the unit they prefer. What they
 * typed themselves always wins. Nothing of the member's goes into an answer by another way than this and the commands
 * about their own tanks, so an answer with `read` lines from here is for the member alone.
 */
export function withDefaults(command: Command, input: Input, keep: Keep | undefined): Filled {
  const tank = keep?.tankInUse();
  if (keep === undefined || tank === undefined) return { input, read: [], hidden: command.private };
  const filled: Record<string, unknown> = { ...input };
  const read: string[] = [];
  for (const option of optionsOf(command.options)) {
    const given = input[option.name];
    const found =
      given === undefined
        ? leftOut(isBatch(command, input) ? undefined : option.fill, tank, keep)
        : inPreferredUnit(option, given, input['of'], tank);
    if (found === undefined) continue;
    filled[option.name] = found.value;
    read.push(found.read);
  }
  return { input: filled, read, hidden: command.private || read.length > 0 || looksInside(command, input) };
}

/** Runs a command with the tank's defaults; the answer begins with what was filled in. */
export function runWithDefaults(command: Command, input: Input, context: Context): Answer {
  return runFilled(command, withDefaults(command, input, context.keep), context);
}

/** Runs a command whose defaults are filled in already. */
export function runFilled(command: Command, { input, read }: Filled, context: Context): Answer {
  const given = command.run(input, context);
  return read.length === 0 ? given : { ...given, read: [...read, ...given.read] };
}

/** Commands that look into the tank in use by themselves: plain words, and daily use from the log. */
function looksInside(command: Command, input: Input): boolean {
  const name = command.path.join(' ');
  if (name === 'dose use') return input['before'] === undefined || input['now'] === undefined;
  return name === 'ask';
}

/** Limewater without a daily use to cover is a batch in a vessel, whatever tank there is. */
function isBatch(command: Command, input: Input): boolean {
  return command.path.join(' ') === 'dose limewater' && input['goal'] === undefined;
}

/** A number without a unit, in the unit the tank's owner prefers; undefined where there is nothing to add. */
function inPreferredUnit(option: Option, given: unknown, of: unknown, tank: Tank): Found | undefined {
  if (typeof given !== 'string' || !/^[\d.,\s]+$/.test(given.trim())) return undefined;
  const { volume: volumeUnit, temperature, alkalinity } = tank.units;
  const isAlkalinity =
    READINGS.has(option.name) && typeof of === 'string' && findParameter(of) === 'alkalinity';
  const unit =
    option.quantity === 'volume'
      ? volumeUnit
      : option.quantity === 'temperature'
        ? temperature
        : isAlkalinity
          ? alkalinity
          : undefined;
  if (unit === undefined) return undefined;
  return { value: `${given.trim()} ${unit}`, read: `${given.trim()} read in your preferred unit, ${unit}` };
}
