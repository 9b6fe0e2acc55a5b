import { significant } from './quantity/format.ts';
import { say } from './wording/say.ts';

/**
 * Something the person asking can put right. Thrown by `core` and `commands`, shown to the person as it is;
 * every other error is a bug and is never shown.
 *
 * `field` is the option or thing that is wrong, `given` what was written there, `limit` what would be accepted
 * ("5 to 20 dKH"), `hint` one sentence that helps. `choices` are complete replacements for `given`: a question
 * asked back ("3.2 dKH" or "3.2 meq/L"?) rather than a guess.
 */
export class Problem extends Error {
  readonly field: string;
  readonly given: string | undefined;
  readonly limit: string | undefined;
  readonly hint: string | undefined;
  readonly choices: readonly string[];

  constructor(message: string, details: ProblemDetails) {
    super(message);
    this.name = 'Problem';
    this.field = details.field;
    this.given = details.given;
    this.limit = details.limit;
    this.hint = details.hint;
    this.choices = details.choices ?? [];
  }
}

export interface ProblemDetails {
  readonly field: string;
  readonly given?: string | undefined;
  readonly limit?: string | undefined;
  readonly hint?: string | undefined;
  readonly choices?: readonly string[] | undefined;
}

/**
 * Checks that `value` is finite and within `[min, max]`; returns it. `unit` is only for the sentence shown.
 *
 * @throws Problem naming the field and the range.
 */
export function inRange(field: string, value: number, min: number, max: number, unit: string): number {
  if (Number.isFinite(value) && value >= min && value <= max) return value;
  const [low, high] = [significant(min, FIGURES), `${significant(max, FIGURES)} ${unit}`.trim()];
  const limit = say('convert.fromTo', { low, high });
  const given = `${significant(value, FIGURES)} ${unit}`.trim();
  throw new Problem(say('convert.outside', { field, limit }), { field, given, limit });
}

/** Figures a limit and what broke it are shown with. */
const FIGURES = 4;
