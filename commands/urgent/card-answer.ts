import { urgentCard, type UrgentId } from '../../core/care/urgent/cards.ts';
import { hazard } from '../../core/care/hazards.ts';
import { PEOPLE_FIRST } from '../../core/care/urgent/people.ts';
import { salinityRemark } from '../../core/water/salinity-remark.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type Fact, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { urgentAction } from './action.ts';
import { fact, type Numbers } from './facts.ts';
import { personAction } from './hurt.ts';
import { knownFrom, type Known, type UrgentInput } from './input.ts';
import { numbersFor } from './numbers.ts';

/** Fields of one form. */
const MOST_ASKED = 3;

/** The card with this tank's numbers; the first line is the first thing to do, whatever the numbers are. */
export function cardAnswer(id: UrgentId, input: UrgentInput): Answer {
  const { first, steps, never, stop, published = [], sources } = urgentCard(id);
  const known = knownFrom(id, input);
  const { read, facts, working, sources: more, missing } = numbersFor(id, known, input.of);
  return answer({
    headline: first,
    tone: 'urgent',
    read,
    unused: known.left,
    facts: [...salinityBeside(id, known), ...facts],
    steps,
    working: [...working, ...published],
    dangers: [PEOPLE_FIRST, ...caustic(input), ...never],
    cautions: [`Stop and ask: ${stop}`],
    sources: [...sources, ...more],
    next: [personAction(), ...fill(id, input, missing), ...along(id, input, known.salinity !== undefined)],
  });
}

/** What ran into the tank stands in its vessel, too. */
function caustic({ of }: UrgentInput): readonly string[] {
  return of === 'limewater' ? hazard('lime').dangers.slice(0, 1) : [];
}

/** Salinity that is out of bounds, before the other numbers, where the card is not about it. */
function salinityBeside(id: UrgentId, { salinity }: Known): readonly Fact[] {
  const remark = salinity && id !== 'salinity crash' ? salinityRemark(salinity.value) : undefined;
  return remark === undefined ? [] : [fact('first see', remark)];
}

/** A form for the numbers that are missing. */
function fill(id: UrgentId, input: UrgentInput, missing: Numbers['missing']): readonly NextAction[] {
  if (missing.length === 0) return [];
  const given = withText(input, missing);
  return [action(say('urgent.workItOut'), 'urgent', { what: id, ...given }, missing.slice(0, MOST_ASKED))];
}

/** What helps next. */
function along(id: UrgentId, { volume, salinity }: UrgentInput, isRead: boolean): readonly NextAction[] {
  if (id === 'salinity crash' && salinity !== undefined && isRead) {
    const input = { now: salinity, ...(volume === undefined ? {} : { volume }) };
    return [action(say('urgent.dayByDay'), 'salinity adjust', input)];
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
