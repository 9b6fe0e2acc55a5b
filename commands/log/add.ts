import { z } from 'zod';
import { printed, printedChange } from '../../core/log/value.ts';
import { MAX_MESSAGE_LENGTH } from '../../core/message-length.ts';
import { Problem } from '../../core/problem.ts';
import { isOff, judge, readingOf, type Judged, type Value } from '../../core/water/assess.ts';
import { parameter } from '../../core/water/parameter.ts';
import { readLine, type Line } from '../../core/words/line.ts';
import { readWhen } from '../../core/words/when.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { stepsFor } from '../checkup/advice.ts';
import { defineCommand, type OwnContext } from '../command.ts';
import type { Tank } from '../keep.ts';
import { textOption } from '../options.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { inZone } from '../zone.ts';
import { changesOf, changeWords, type Changed } from './alerts.ts';
import { aimWords, rangeNamesOf, rangesOf } from './ranges.ts';
import { watchedWords } from './watched.ts';
import { momentsOf, timeOf, unreadParts, unreadNumbers, zoneLine } from './words.ts';
import { scan } from '../../core/language/tokens.ts';
import { troubleTold } from '../../core/language/trouble.ts';
import { fittingOf } from '../../core/corals/say.ts';
import { sentencesOf } from '../../core/words/sentence.ts';
import { counted } from '../../core/quantity/format.ts';
import { fittingHeadline } from '../fitting.ts';
import { say } from '../../core/wording/say.ts';

export const addCommand = defineCommand({
  path: ['log', 'add'],
  summary: 'Log readings of your tank: says what changed, how it stands and what to do',
  example: '/log add readings:420/8.1/1350 sg 1.025 78f no3 8 po4 .06',
  private: true,
  options: z.strictObject({
    readings: textOption('What you tested, e.g. alk 8.1 ca 420 mg 1350 or 420/8.1/1350 sg 1.025 78f', {
      max: MAX_MESSAGE_LENGTH,
      fields: 'readings',
      isAsked: true,
    }).optional(),
    at: textOption('When, if not now: 2 hours ago, yesterday 7pm, 3 Jan 18:00').optional(),
    note: textOption('Anything to remember with it').optional(),
    tank: textOption('Which of your tanks, if not the one in use', { suggest: 'tank' }).optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    const here = inZone(context, tank);
    const { readings = '' } = input;
    const line = someReadings(readLine(readings, 'readings', tank.units), readings);
    const when = readWhen(input.at, { field: 'at', nowMs: context.nowMs, zone: here.zone });
    const values = line.values.map(({ parameter: id, value }) => ({ parameter: id, value }));
    const changes = changesOf(keep, tank, values, when.atMs);
    const salinity = readingOf(keep.latest(tank.id), 'salinity');
    keep.addEntry(tank.id, { atMs: when.atMs, values, note: input.note });
    const watched = watchedWords(keep, tank, values);
    return logged({ tank, line, changes, when, note: input.note, salinity, watched }, here);
  },
});

/** @throws Problem for a line without a reading. */
export function someReadings(line: Line, given: string): Line {
  if (line.values.length > 0) return line;
  throw new Problem(say('log.iFoundNoReading'), {
    field: 'readings',
    given,
    hint: say('log.nameEachGiveIts'),
  });
}

interface Logged {
  readonly tank: Tank;
  readonly line: Line;
  readonly changes: readonly Changed[];
  readonly when: { readonly atMs: number; readonly notes: readonly string[] };
  readonly note: string | undefined;
  /** The last one logged before. */
  readonly salinity: Value | undefined;
  /** What lies beyond a border the member wanted to be told of. */
  readonly watched: readonly string[];
}

function logged({ tank, line, changes, when, note, salinity, watched }: Logged, context: OwnContext): Answer {
  const { atMs, notes } = when;
  const judged = judgedWith(line, atMs, salinity, tank);
  const acting = judged.filter(isOff);
  const changeOf = (one: Judged): Changed | undefined =>
    changes.find(({ value }) => value.parameter === one.parameter);
  const alerts = changes.flatMap(({ alert }) => (alert === undefined ? [] : [alert]));
  const nameOf = rangeNamesOf(tank);
  return answer({
    headline: headline(
      tank,
      changes,
      watched,
      verdictWords(judged, { fast: alerts.length > 0, unread: line.unread, note }),
    ),
    tone: judged[0]?.verdict === 'urgent' ? 'urgent' : 'plain',
    instants: momentsOf([atMs], context),
    read: [
      `${tank.name}, tested at ${timeOf(atMs, context)} (${zoneLine(context)})`,
      ...notes,
      ...new Set(line.values.flatMap((value) => value.notes)),
    ],
    unused: unreadParts(line.unread),
    isList: true,
    facts: judged.map((one) => {
      const { parameter: id, value, range, verdict, at35 } = one;
      const changed = changeOf(one);
      const scaled = at35 === undefined ? '' : `, ${printed(id, at35, tank.units)} at salinity 35`;
      const change = changed === undefined ? '' : `, ${changeWords(changed, atMs, tank)}`;
      const aim = aimWords(id, range, nameOf(id), tank.units);
      return {
        label: parameter(id).label,
        value: `${printed(id, value, tank.units)}${scaled}${change} (${aim})`,
        verdict,
      };
    }),
    steps: [
      ...acting.filter(({ verdict }) => verdict === 'urgent').flatMap((one) => stepsFor(one, tank.units)),
      ...alerts.flatMap(sentencesOf),
      ...acting.filter(({ verdict }) => verdict !== 'urgent').flatMap((one) => stepsFor(one, tank.units)),
    ],
    cautions: acting.length === 0 ? [] : ['Ranges and paces are common practice; keepers differ.'],
    sources: ['practice'],
    next: [
      action(say('log.undo'), 'log undo', { tank: tank.name }),
      action(say('log.checkup'), 'checkup', { tank: tank.name }),
    ],
  });
}

/** The readings of the line, ions by the salinity of the log where the line has none and it is of the same day. */
function judgedWith(line: Line, atMs: number, salinity: Value | undefined, tank: Tank): readonly Judged[] {
  const dated = line.values.map((value) => ({ ...value, atMs }));
  const known = readingOf(line.values, 'salinity') === undefined && salinity !== undefined ? [salinity] : [];
  const ids = new Set(line.values.map(({ parameter: id }) => id));
  return judge([...dated, ...known], rangesOf(tank)).filter((one) => ids.has(one.parameter));
}

/** Most readings named in the headline. */
const NAMED = 3;

interface Beside {
  /** Whether something moved faster than usual. */
  readonly fast: boolean;
  readonly unread: readonly string[];
  readonly note: string | undefined;
}

/** What was logged, as much of it as there is room for, and the verdict. */
function headline(
  tank: Tank,
  changes: readonly Changed[],
  watched: readonly string[],
  verdict: string,
): string {
  const named = changes.slice(0, NAMED).map(({ value: { parameter: id, value }, before }) => {
    const change = before === undefined ? '' : ` (${printedChange(id, before.value, value, tank.units)})`;
    return { bare: `${parameter(id).label} ${printed(id, value, tank.units)}`, change };
  });
  const more = changes.length > NAMED ? [`${changes.length - NAMED} more`] : [];
  const line = (said: readonly string[]): string =>
    [...watched.map((words) => `${words}.`), `Logged for ${tank.name}: ${said.join(', ')}.`, verdict].join(
      ' ',
    );
  return fittingHeadline(
    line([...named.map(({ bare, change }) => `${bare}${change}`), ...more]),
    line([...named.map(({ bare }) => bare), ...more]),
    line([counted(changes.length, 'reading')]),
  );
}

function verdictWords(judged: readonly Judged[], { fast, unread, note }: Beside): string {
  const [first] = judged;
  if (first?.verdict === 'urgent')
    return `Urgent: ${parameter(first.parameter).label} ${printed(first.parameter, first.value)}.`;
  if (first?.verdict === 'doubtful')
    return `Test ${parameter(first.parameter).label} again: it is hard to believe.`;
  if (fast) return 'That moved faster than usual.';
  const off = judged.filter(isOff);
  if (off.length === 0) return fineWords(unread, note);
  const names = off.map(({ parameter: id, verdict }) => `${parameter(id).label} ${verdict}`);
  return `Worth a look: ${fittingOf(names, NAMES_LETTERS)}.`;
}

/** So many letters of what is off stand in the headline. */
const NAMES_LETTERS = 60;

/** All is said to be well only where every part was read and the note tells of no trouble. */
function fineWords(unread: readonly string[], note = ''): string {
  const trouble = troubleTold(scan(note));
  if (trouble !== undefined) return `These numbers do not explain what you note (${trouble}).`;
  if (unreadNumbers(unread).length > 0) return 'What I read is where it should be; the rest is not logged.';
  return 'All of it is where it should be.';
}
