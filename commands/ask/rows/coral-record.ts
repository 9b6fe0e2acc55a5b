import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { say } from '../../../core/wording/say.ts';
import { answer, type Answer } from '../../answer.ts';
import { action } from '../../calls.ts';
import type { OptionsSchema, OwnContext } from '../../command.ts';
import { addCoralCommand } from '../../coral/add.ts';
import { askedSince } from '../../coral/asked-since.ts';
import { checkCoralsCommand } from '../../coral/check.ts';
import { listCoralsCommand } from '../../coral/list.ts';
import { mapCoralsCommand } from '../../coral/map.ts';
import { moveCoralCommand } from '../../coral/move.ts';
import { removeCoralCommand } from '../../coral/remove.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { attempt } from './attempt.ts';
import { deedOf, isPart, oneAtATime, recordedElsewhere } from './coral-record-elsewhere.ts';
import { originOf } from './coral-said.ts';
import { sizeSaid, spotSaid } from './spot-in.ts';

export const coralRecordRows: readonly Row[] = [
  {
    kind: 'coral-record',
    label: 'ask.kindCoralRecord',
    needs: [{ oneOf: ['corals'], ask: 'coral.whichCoral', when: (frame) => shownBy(frame) === undefined }],
    uses: ['corals', 'heads', 'lengths', 'moments', 'counts'],
    answer: (frame, context) => {
      const [coral, ...others] = frame.slots.corals ?? [];
      if (context.keep === undefined) return recordedElsewhere(deedOf(frame), coral, frame, others);
      if (coral === undefined) {
        const shown = shownBy(frame);
        return shown === undefined ? undefined : call<OptionsSchema>(shown, {}, context);
      }
      const done = recorded(frame, coral, context);
      return { ...done, read: [...done.read, ...oneAtATime(others)] };
    },
  },
];

/** "check my corals", "show the map". */
function shownBy({ slots, reading: { scanned } }: Frame) {
  if ((slots.corals ?? []).length > 0) return undefined;
  if (met(scanned, 'deeds.checks')) return checkCoralsCommand;
  if (met(scanned, 'deeds.maps')) return mapCoralsCommand;
  return met(scanned, 'deeds.shows', 'manner.askWhere', 'manner.askWhich') ? listCoralsCommand : undefined;
}

function recorded(frame: Frame, coral: string, context: OwnContext): Answer {
  const deed = deedOf(frame);
  if (deed === 'gone') return isPart(frame) ? partGone(coral) : call(removeCoralCommand, { coral }, context);
  const at = spotSaid(frame);
  const size = sizeSaid(frame);
  if (deed === 'moved')
    return at.missing.length === 0 || size !== undefined
      ? call(moveCoralCommand, { coral, at: at.missing.length === 0 ? at.text : undefined, size }, context)
      : whereNow(coral, at.missing);
  if (at.missing.length > 0 || size === undefined) return whereNew(coral, at, size);
  const input = { coral, at: at.text, size, origin: originOf(frame), since: sinceOf(frame, context) };
  return call(addCoralCommand, input, context);
}

function partGone(coral: string): Answer {
  return answer({
    headline: say('ask.partGone', { coral }),
    tone: 'question',
    next: [
      action(say('ask.sayHowBigNow'), 'coral move', { coral }, ['size']),
      action(say('ask.allGone'), 'coral remove', { coral }),
    ],
  });
}

function whereNow(coral: string, missing: readonly string[]): Answer {
  return answer({
    headline: say('ask.whereDoesItStand', { coral }),
    tone: 'question',
    facts: [{ label: say('ask.stillToSay'), value: missing.join(', ') }],
    next: [action(say('ask.sayWhereItStandsNow'), 'coral move', { coral }, ['at'])],
  });
}

function whereNew(coral: string, at: ReturnType<typeof spotSaid>, size: string | undefined): Answer {
  const isPlaced = at.missing.length === 0;
  const open = [...at.missing, ...(size === undefined ? [say('ask.widthOrHeads')] : [])];
  return answer({
    headline: say('ask.placeAndSize', { coral }),
    tone: 'question',
    facts: [{ label: say('ask.stillToSay'), value: open.join(', ') }],
    next: [
      action(
        say('coral.placeInMyTank'),
        'coral add',
        { coral, ...(isPlaced ? { at: at.text } : {}), ...(size === undefined ? {} : { size }) },
        [...(isPlaced ? [] : (['at'] as const)), ...(size === undefined ? (['size'] as const) : [])],
      ),
    ],
  });
}

/** The first time or day said that can be read as the day it came. */
function sinceOf({ slots: { moments = [] } }: Frame, { nowMs }: OwnContext): string | undefined {
  return moments.find((text) => (attempt(() => askedSince(text, nowMs)) ?? '') !== '');
}
