import { met } from '../../../core/language/met.ts';
import { timeIn } from '../../../core/language/scan/past.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { parameter } from '../../../core/water/parameter.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { addCommand } from '../../log/add.ts';
import { logDoseCommand } from '../../log/dose.ts';
import { showCommand } from '../../log/show.ts';
import { trendCommand } from '../../log/trend.ts';
import { undoCommand } from '../../log/undo.ts';
import type { Row } from '../row.ts';
import { own } from './own.ts';
import { watchSaid } from './watch.ts';

export const logRows: readonly Row[] = [
  {
    kind: 'log',
    label: 'ask.kindLog',
    uses: ['of', 'levels', 'now', 'was', 'salinity', 'temperature', 'moments', 'salt', 'amount', 'limit'],
    answer: (frame, context) => watchSaid(frame, context) ?? ofLog(frame, context),
  },
];

function ofLog(frame: Frame, context: OwnContext): Answer {
  const { slots, reading } = frame;
  const { scanned } = reading;
  const { salt, amount, of } = slots;
  const label = of === undefined ? undefined : parameter(of).label;
  if (met(scanned, 'deeds.corrects', 'deeds.cancels') && !met(scanned, 'deeds.shows'))
    return own(
      'ask.undoLast',
      undoCommand,
      { of: met(scanned, 'deeds.doses') ? 'dose' : undefined },
      context,
    );
  if (salt !== undefined && amount !== undefined) {
    const at = whenSaid(frame);
    return own('ask.keepDosed', logDoseCommand, { with: salt, amount, at }, context);
  }
  const line = lineOf(frame);
  if (line !== undefined)
    return own('ask.keepReadings', addCommand, { readings: line, at: whenSaid(frame) }, context);
  const isTrend = met(
    scanned,
    'parts.moved',
    'events.wentUp',
    'events.wentDown',
    'deeds.compares',
    'deeds.shows',
  );
  if (label !== undefined && (isTrend || met(scanned, 'manner.askHow')))
    return own('ask.showHowItMoves', trendCommand, { of: label }, context);
  return own('ask.showMyReadings', showCommand, { of: label }, context);
}

/** Readings as a line for `/log add`: every level that was measured, by its name; a wish or a rate is none. */
function lineOf({ slots: { levels = [] } }: Frame): string | undefined {
  const measured = levels.filter(({ part }) => part === 'now' || part === 'was' || part === 'other');
  if (measured.length === 0) return undefined;
  return measured.map(({ of, text }) => `${nameOf(of)} ${text}`).join(', ');
}

function nameOf(of: Parameters<typeof parameter>[0]): string {
  return parameter(of).label.toLowerCase();
}

/** When it was tested, in the member's words; undefined for now. */
function whenSaid({ reading: { scanned, said } }: Frame): string | undefined {
  const first = said.find(({ part }) => part === 'now' || part === 'was' || part === 'amount');
  const time = timeIn(scanned, first?.number.start);
  return time === undefined ? undefined : scanned.text.slice(time.start, time.end);
}
