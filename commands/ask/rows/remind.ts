import { met, type Met } from '../../../core/language/met.ts';
import type { Scanned } from '../../../core/language/tokens.ts';
import { ruleText } from '../../../core/schedule/say.ts';
import { readRepeat, type Repeat } from '../../../core/words/repeat.ts';
import { wishWords } from '../../../core/words/remind-lead.ts';
import { say } from '../../../core/wording/say.ts';
import { answer, type Answer } from '../../answer.ts';
import { action } from '../../calls.ts';
import type { OwnContext } from '../../command.ts';
import type { Keep } from '../../keep.ts';
import type { Reminder } from '../../reminder.ts';
import { changeCommand } from '../../remind/change.ts';
import { clockChangeAnswer } from '../../remind/clock-change.ts';
import { remindFromWords } from '../../remind/from-words.ts';
import { listCommand } from '../../remind/list.ts';
import { onlyOf, remindersNamed } from '../../remind/meant.ts';
import { pauseCommand } from '../../remind/pause.ts';
import { removeReminderCommand } from '../../remind/remove.ts';
import { pauseElsewhere, resumeElsewhere, stopElsewhere } from '../../remind/elsewhere.ts';
import { resumeCommand } from '../../remind/resume.ts';
import { named } from '../../remind/times.ts';
import { knownZone } from '../../zone.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { attempt } from './attempt.ts';
import { watchSaid } from './watch.ts';

export const remindRows: readonly Row[] = [
  {
    kind: 'remind',
    label: 'ask.kindRemind',
    uses: ['moments', 'span', 'spans', 'of', 'limit', 'counts'],
    answer: (frame, context) => {
      const { scanned, given } = frame.reading;
      if (met(scanned, 'times.clockChange')) return clockChangeAnswer(given, context);
      return (
        watchSaid(frame, context) ??
        (context.keep === undefined
          ? ofExistingElsewhere(scanned)
          : ofExisting(scanned, given, context.keep, context)) ??
        remindFromWords(given, context)
      );
    },
  },
];

/** Where nothing of the member's may be touched: how those there are are ended, paused or begun again. */
function ofExistingElsewhere(scanned: Scanned): Answer | undefined {
  if (scanned.tokens[0]?.word === 'remind') return undefined;
  if (leads(scanned, 'deeds.cancels')) return stopElsewhere();
  if (leads(scanned, 'deeds.pauses')) return pauseElsewhere();
  return leads(scanned, 'deeds.resumes') ? resumeElsewhere() : undefined;
}

/** What is done with reminders there are: ended, paused, moved, listed. */
function ofExisting(scanned: Scanned, given: string, keep: Keep, context: OwnContext): Answer | undefined {
  // "remind me to change 20 gal every saturday" wishes for a new one, whatever is done in it.
  if (scanned.tokens[0]?.word === 'remind' && timeOf(given, context) !== undefined) return undefined;
  const meant = remindersNamed(keep, scanned);
  if (leads(scanned, 'deeds.cancels')) {
    return meant.length > 1
      ? whichOf(meant)
      : call(removeReminderCommand, { reminder: idOf(meant), sure: 'yes' }, context);
  }
  if (leads(scanned, 'deeds.pauses'))
    return call(pauseCommand, { reminder: idOf(meant), until: untilIn(scanned) }, context);
  if (leads(scanned, 'deeds.resumes')) return call(resumeCommand, { reminder: idOf(meant) }, context);
  const repeat = timeOf(given, context);
  if (repeat === undefined) {
    const isAsked = met(scanned, 'deeds.shows', 'manner.askWhich', 'manner.askWhen', 'manner.askMuch');
    return isAsked ? call(listCommand, {}, context) : undefined;
  }
  if (meant.length === 0 || !leads(scanned, 'deeds.movesOn')) return undefined;
  const { rule, anchor } = repeat;
  const when = rule.every === 'once' ? anchor : ruleText(rule, anchor);
  return call(changeCommand, { reminder: String(onlyOf(meant).id), when }, context);
}

function whichOf(all: readonly Reminder[]): Answer {
  return answer({
    headline: say('ask.whichToStop'),
    tone: 'question',
    next: all.map((one) => action(named(one), 'remind remove', { reminder: String(one.id), sure: 'yes' })),
  });
}

/** Most words before the one that says what is to be done. */
const MOST_LEAD = 4;

/** Whether one of the first words is of these classes. */
function leads({ tokens }: Scanned, ...classes: readonly Met[]): boolean {
  return met({ ...EMPTY, tokens: tokens.slice(0, MOST_LEAD) }, ...classes);
}

const EMPTY: Omit<Scanned, 'tokens'> = { text: '', numbers: [], names: [] };

function idOf(meant: readonly Reminder[]): string | undefined {
  const [only, other] = meant;
  return only === undefined || other !== undefined ? undefined : String(only.id);
}

/** The words behind "until". */
function untilIn({ text, tokens }: Scanned): string | undefined {
  const until = tokens.find(({ word }) => word === 'until' || word === 'till');
  return until === undefined ? undefined : text.slice(until.end).trim();
}

/** The time a message says; undefined where it says none. */
function timeOf(given: string, context: OwnContext): Repeat | undefined {
  const zone = knownZone(context, context.keep?.tankInUse()) ?? 'UTC';
  return attempt(() => readRepeat(wishWords(given), { field: 'question', nowMs: context.nowMs, zone }));
}
