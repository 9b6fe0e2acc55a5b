import { Problem } from '../../core/problem.ts';
import { significant } from '../../core/quantity/format.ts';
import { threeFigures, roundedDown } from '../../core/quantity/portion.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { splitADay } from './a-day.ts';
import { inOwnUnit } from './asked.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { say } from '../../core/wording/say.ts';

/** The most a day, in the parameter's own unit, and its words. */
export interface AskedPace {
  readonly most: number;
  readonly words: string;
  /** The member's own. */
  readonly isOwn?: true;
}

/**
 * The usual most a day; the gentle one for "gentle"; or the member's own, which may only be slower.
 *
 * @throws Problem when the pace is faster than the usual limit, zero or unreadable.
 */
export function askedPace(id: ParameterId, text: string | undefined): AskedPace {
  const { unit, kind, label } = parameter(id);
  const { pace } = limitsOf(id);
  if (pace === undefined) throw new Error(`${label} has no pace but is dosed`);
  const practice = (most: number, word: string): AskedPace => ({
    most,
    words: `${word} ${significant(most)} ${unit} a day (common practice; keepers differ)`,
  });
  if (text === undefined) return practice(pace.up, 'at most');
  if (/^(?:gentle|slow|slowly|sps)$/i.test(text)) return practice(pace.gentle ?? pace.up, 'gentle:');
  const asked = inOwnUnit(
    id,
    readQuantity(kind, splitADay(text).amount, { field: 'pace', fallback: unit }).value,
  );
  // To the three figures that are printed, down, so that no portion is above the pace as it is read.
  const most = roundedDown(asked, threeFigures(asked));
  const limit = `above 0, at most ${pace.up} ${unit} a day`;
  if (most <= 0) throw new Problem(say('dose.paceAboveNone'), { field: 'pace', given: text, limit });
  if (most > pace.up * (1 + 1e-9)) {
    throw new Problem(say('dose.fasterThanUsuallyMoved', { label }), {
      field: 'pace',
      given: text,
      limit,
      hint: say('dose.goSlowerTankHas'),
    });
  }
  return { most, words: `your ${significant(most)} ${unit} a day`, isOwn: true };
}
