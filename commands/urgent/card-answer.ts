import { urgentCard, type UrgentId } from '../../core/care/urgent/cards.ts';
import { PEOPLE_FIRST } from '../../core/care/urgent/person.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { urgentAction } from './action.ts';
import type { Numbers, UrgentInput } from './input.ts';
import { numbersFor } from './numbers.ts';

/** Fields of one form. */
const MOST_ASKED = 3;

/** The card with this tank's numbers; the first line is the first thing to do. */
export function cardAnswer(id: UrgentId, input: UrgentInput): Answer {
  const { first, steps, never, stop, published = [], sources } = urgentCard(id);
  const isPerson = id === 'person hurt';
  const { read, facts, working, sources: more, missing } = numbersFor(id, input);
  return answer({
    headline: first,
    read,
    facts,
    steps,
    working: [...working, ...published],
    cautions: [...(isPerson ? [] : [PEOPLE_FIRST]), ...never, isPerson ? stop : `Stop and ask: ${stop}`],
    sources: [...sources, ...more],
    next: isPerson ? [] : [urgentAction('person hurt'), ...fill(id, input, missing), ...along(id, input)],
  });
}

/** A form for the numbers that are missing. */
function fill(id: UrgentId, input: UrgentInput, missing: Numbers['missing']): readonly NextAction[] {
  if (missing.length === 0) return [];
  const given = withText(input, missing);
  return [action('Work it out for my tank', 'urgent', { what: id, ...given }, missing.slice(0, MOST_ASKED))];
}

/** What helps next. */
function along(id: UrgentId, { volume, salinity }: UrgentInput): readonly NextAction[] {
  if (id === 'salinity crash' && salinity !== undefined) {
    const input = { now: salinity, ...(volume === undefined ? {} : { volume }) };
    return [action('Day by day', 'salinity adjust', input)];
  }
  return id === 'power cut' ? [urgentAction('cold water'), urgentAction('ammonia')] : [];
}

/** The values given, but for those to be asked. */
function withText(input: UrgentInput, but: Numbers['missing']): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(input).flatMap(([name, value]: [string, string | undefined]) =>
      value === undefined || but.some((asked) => asked === name) ? [] : [[name, value]],
    ),
  );
}
