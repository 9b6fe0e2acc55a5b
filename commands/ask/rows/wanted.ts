import { compoundsFor, formsOf } from '../../../core/dosing/compound.ts';
import type { Level, Slots } from '../../../core/language/slots.ts';
import type { ParameterId } from '../../../core/water/parameter.ts';

/** A parameter to be raised. */
export interface Wanted {
  readonly of: ParameterId;
  /** Undefined where only a rise was said: goal is then "+2 dKH". */
  readonly now: string | undefined;
  readonly goal: string;
  readonly salt: string | undefined;
}

/**
 * Every parameter a dose can raise for which a goal or a rise was said, the one the message is about first. A value that
 * only moved is never a goal.
 */
export function wantedIn(slots: Slots): readonly Wanted[] {
  const { levels = [], of } = slots;
  const ids = [...new Set([...(of === undefined ? [] : [of]), ...levels.map((level) => level.of)])];
  return ids.flatMap((id): readonly Wanted[] => {
    if (compoundsFor(id).length === 0) return [];
    // What was filled in from the case or the log is no level of the message, and is of its main parameter.
    const filled = id === of ? slots : {};
    const last = (...parts: readonly Level['part'][]): string | undefined =>
      levels.findLast((level) => level.of === id && parts.includes(level.part))?.text;
    const rise = last('change') ?? filled.change;
    const goal = last('wanted', 'target') ?? filled.wanted ?? (rise === undefined ? undefined : `+${rise}`);
    if (goal === undefined) return [];
    const now = last('now') ?? last('was') ?? filled.now ?? filled.was ?? last('other');
    return [{ of: id, now, goal, salt: saltFor(slots, id) }];
  });
}

/** The salt that was named and raises it; none where the one named raises something else. */
export function saltFor({ salts = [] }: Slots, of: ParameterId): string | undefined {
  return salts.find((word) => formsOf(word).some(({ raises }) => raises.includes(of)));
}
