import { printed } from '../../core/log/value.ts';
import { sideOf, urgentSide, limitsOf, type Side } from '../../core/water/limits.ts';
import { levelCard } from '../../core/care/urgent/level-card.ts';
import { paceWords } from '../../core/water/pace-words.ts';
import { firstLabel, type ParameterId } from '../../core/water/parameter.ts';
import type { Answer, Fact } from '../answer.ts';
import { aimWords } from '../log/ranges.ts';
import { urgentAction } from '../urgent/action.ts';
import { fittingHeadline } from '../fitting.ts';

const WORDS: Readonly<Record<Side, string>> = { low: 'or lower', high: 'or higher' };

/**
 * At which level to act: the usual range and the level that is an emergency on each side come before an answer on the
 * same parameter, and the level that was said is held against both.
 */
export function actAtAnswer(id: ParameterId, said: number | undefined, given: Answer): Answer {
  const { usual, urgent = {} } = limitsOf(id);
  const sides = (['high', 'low'] as const).filter((side) => urgent[side] !== undefined);
  const bounds = sides.map((side) => `${twoUnits(id, urgent[side] ?? NaN)} ${WORDS[side]}`);
  const name = firstLabel(id);
  const emergency =
    bounds.length === 0
      ? 'no level is an emergency by itself: a sudden move harms more'
      : `an emergency at ${bounds.join(', and at ')}`;
  const between =
    sides.length === 2 ? ' Between the two there is time: test again, then bring it back slowly.' : '';
  const aim = aimWords(id, usual, 'usual', {});
  const then = said === undefined ? between : ` ${judged(id, said)}`;
  const alone = `${emergency}.${then}`;
  const headline = fittingHeadline(
    `${name}: ${aim}; ${alone}`,
    `${name}: ${alone}`,
    `${alone.charAt(0).toUpperCase()}${alone.slice(1)}`,
    then === '' ? `${name}: ${emergency}.` : then.trim(),
  );
  const cards = sides.flatMap((side) => levelCard(id, side) ?? []);
  return {
    ...given,
    headline,
    facts: [
      ...(headline.includes(aim) ? [] : [{ label: 'usual', value: aim }]),
      ...sides.map((side) => boundFact(id, side, urgent[side] ?? NaN)),
      ...given.facts,
    ],
    steps: [...given.steps, ...(said === undefined ? paceStep(id) : [])],
    next: [...[...new Set(cards)].map(urgentAction), ...given.next],
  };
}

/** A level against both: "27.5 °C is above the usual range and no emergency." */
function judged(id: ParameterId, value: number): string {
  const text = twoUnits(id, value);
  const side = urgentSide(id, value);
  if (side !== undefined) return `${text} is an emergency now: test again at once, and act today.`;
  const off = sideOf(value, limitsOf(id).usual);
  if (off === undefined) return `${text} is in the usual range: nothing to act on.`;
  return `${text} is ${off === 'low' ? 'below' : 'above'} the usual range, and no emergency yet.`;
}

function boundFact(id: ParameterId, side: Side, bound: number): Fact {
  return {
    label: `emergency, too ${side}`,
    value: `${twoUnits(id, bound)} ${WORDS[side]} (common practice)`,
  };
}

/** Warmth in both scales: whoever asks may read either. */
function twoUnits(id: ParameterId, value: number): string {
  const own = printed(id, value);
  return id === 'temperature' ? `${own} (${printed(id, value, { temperature: '°F' })})` : own;
}

function paceStep(id: ParameterId): readonly string[] {
  if (limitsOf(id).pace === undefined) return [];
  const { up, down } = paceWords(id);
  return [`Bring it back slowly: up by ${up}, down by ${down}.`];
}
