import { fittingOf } from '../../core/corals/say.ts';
import { type OwnUnits, printed } from '../../core/log/value.ts';
import {
  isOff,
  readingOf,
  usualRange,
  type Judged,
  type RangeOf,
  type Value,
} from '../../core/water/assess.ts';
import { urgentSide } from '../../core/water/limits.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { fittingHeadline } from '../fitting.ts';
import type { ChosenUnits } from '../../core/quantity/chosen-units.ts';
import { namedWith } from './advice.ts';

/** Readings to judge, and whose. */
export interface Judging {
  readonly values: readonly Value[];
  readonly read: readonly string[];
  /** The usual ranges where left out. */
  readonly rangeOf?: RangeOf;
  /** What the range of a parameter is called: "usual" where left out. */
  readonly rangeName?: (id: ParameterId) => string;
  readonly units?: ChosenUnits;
  /** Steps that follow from something else than the numbers. */
  readonly steps?: readonly string[];
  /** Numbers given and not used: while there are any, nothing is called fine. The caller names them in `read`, too. */
  readonly unused?: readonly string[];
  /** The words by which trouble was reported beside the numbers. */
  readonly trouble?: string | undefined;
  /** How levels came to where they are, where that was fast: in range is not yet fine then. */
  readonly moves?: readonly string[];
  /** Other words beside them that nobody looked at. */
  readonly beside?: string | undefined;
}

/** The verdict on all of them, as much of it as one line holds. */
export function headline(judged: readonly Judged[], judging: Judging): string {
  const { units = {} } = judging;
  const [first] = judged;
  if (first === undefined) return 'There is no reading to judge.';
  const named = namedWith(first, units);
  if (first.verdict === 'urgent') return urgentHeadline(judged, units);
  if (first.verdict === 'doubtful') {
    const again = (what: string): string =>
      `Test ${parameter(first.parameter).label} again first: ${what} is hard to believe. Dose nothing until then.${alsoSalinity(judged, units)}`;
    return fittingHeadline(again(named), again(printed(first.parameter, first.value, units)));
  }
  const notable = judged.filter(({ verdict }) => verdict !== 'fine');
  const place = placeOf(judging);
  if (notable.length === 0) return fine(judging, place);
  const names = notable.map(({ parameter: id, verdict, at35 }) => {
    const by = at35 === undefined ? '' : ' at salinity 35';
    return `${parameter(id).label} ${verdict}${by}`;
  });
  const rest = notable.length === judged.length ? '' : ` The rest is ${place}.`;
  const { trouble, moves = [] } = judging;
  const lead = trouble === undefined ? '' : `You tell of trouble (${trouble}): look at that first. `;
  const also = moves.length === 0 ? '' : ` And ${moves.join('; ')}.`;
  const said = `${notable.some(isOff) ? 'Worth a look' : nothingElse(judging)}:`;
  return fittingHeadline(
    `${lead}${said} ${names.join(', ')}.${also}${rest}`,
    `${lead}${said} ${names.join(', ')}.`,
    `${said} ${fittingOf(names, NAMES_LETTERS)}.`,
  );
}

/** So many letters of names stand in a line that has no room for all. */
const NAMES_LETTERS = 100;

/** Every urgent reading, in the order to act in; without the numbers where they are too many for one line. */
function urgentHeadline(judged: readonly Judged[], units: OwnUnits): string {
  const urgent = judged.filter(({ verdict }) => verdict === 'urgent');
  const then = `Confirm ${urgent.length === 1 ? 'it' : 'them'} with a second test now, and act today.`;
  const full = urgent.map((one) => `${namedWith(one, units)} is ${way(one)}`).join(', ');
  const bare = urgent.map((one) => `${parameter(one.parameter).label} ${way(one)}`);
  return fittingHeadline(
    `Urgent: ${full}. ${then}${alsoSalinity(judged, units)}`,
    `Urgent: ${bare.join(', ')}. ${then}${alsoSalinity(judged, units)}`,
    `Urgent: ${fittingOf(bare, NAMES_LETTERS / 2)}. ${then}`,
  );
}

function way({ parameter: id, value }: Judged): string {
  return `too ${urgentSide(id, value) ?? 'high'}`;
}

function placeOf({ rangeOf = usualRange }: Judging): string {
  return rangeOf === usualRange ? 'in the usual range' : 'where it should be';
}

/** "Fine" only where every number was used and no trouble was reported. */
function fine({ unused = [], trouble, beside, moves = [] }: Judging, place: string): string {
  if (moves.length > 0)
    return fittingHeadline(
      `In range now, but ${moves.join('; ')}. Find out why first.`,
      'In range now, but it moved fast. Find out why first.',
    );
  if (trouble !== undefined)
    return `These numbers are ${place}, so what you see (${trouble}) has another cause: look for that next.`;
  if (unused.length > 0)
    return fittingHeadline(
      `What I could read is ${place}. I did not use: ${unused.join('; ')}.`,
      `What I could read is ${place}. Not all of it could be read.`,
    );
  if (beside !== undefined)
    return fittingHeadline(
      `No dose needed: these numbers are ${place}. I judged only the numbers, not "${beside}".`,
      `No dose needed: these numbers are ${place}. I judged only the numbers.`,
    );
  return `All of it is ${place}. No dose needed: nothing to do but keep it there.`;
}

function nothingElse({ unused = [], trouble }: Judging): string {
  return trouble === undefined && unused.length === 0 ? 'Nothing to act on' : 'By these numbers';
}

/** Salinity that is off is in the first line, whatever else is worse. */
function alsoSalinity([, ...others]: readonly Judged[], units: OwnUnits): string {
  const off = readingOf(
    others.filter((one) => isOff(one) && one.verdict !== 'urgent'),
    'salinity',
  );
  return off === undefined ? '' : ` And ${namedWith(off, units)} is off, too.`;
}
