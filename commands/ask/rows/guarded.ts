import { urgentCard } from '../../../core/care/urgent/cards.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { parameter } from '../../../core/water/parameter.ts';
import { readSalinity } from '../../../core/water/salinity-reading.ts';
import { say } from '../../../core/wording/say.ts';
import type { Answer } from '../../answer.ts';
import { action } from '../../calls.ts';
import { remarkOn } from '../../salinity/print.ts';
import { remarkFirst } from '../../short/remark-first.ts';
import { attempt } from './attempt.ts';
import { led } from './led.ts';
import { levelsOf } from './levels-of.ts';

/** Kinds whose salinity is not that of the tank, or is what the answer is about. */
const ELSEWHERE: ReadonlySet<string> = new Set([
  'salinity-mix',
  'instrument',
  'kits-disagree',
  'medicine',
  'log',
]);

/** What is true of every answer to plain words: a salinity that is off is said first, and nothing is kept unsaid. */
export function guarded(frame: Frame, given: Answer): Answer {
  return notKept(frame, salinityFirst(remarkFor(frame), given));
}

/** The remark in the first line; with an emergency the act comes first, and where it is of salinity the verdict alone. */
function salinityFirst(remark: string | undefined, given: Answer): Answer {
  if (remark === undefined || given.tone !== 'urgent') return remarkFirst(remark, given);
  if (given.headline === urgentCard('salinity crash').first)
    return led(remark.replace(/ \(.*?\)|;.*/g, '').concat('.'), given, 'it reads');
  const isSaid = given.facts.some(({ value }) => value === remark);
  return isSaid ? given : { ...given, facts: [{ label: 'first see', value: remark }, ...given.facts] };
}

/** The remark on the one salinity said to be that of the tank. */
function remarkFor({ kind, slots, reading: { scanned } }: Frame): string | undefined {
  const [only, more] = levelsOf(slots, 'salinity').filter(({ part }) => part === 'now' || part === 'other');
  const isOther =
    ELSEWHERE.has(kind) || met(scanned, 'hardware.hospitalTank', 'poisons.hypo', 'hardware.calibration');
  if (only?.part !== 'now' || more !== undefined || isOther) return undefined;
  const read = attempt(() => readSalinity(only.text, { field: 'salinity' }));
  return read === undefined ? undefined : remarkOn(read);
}

/** Plain words keep no reading: where that was asked, it is said first, with the button that does it. */
function notKept({ kind, slots: { levels = [] }, reading: { scanned } }: Frame, given: Answer): Answer {
  const readings = levels
    .filter(({ part }) => part === 'now')
    .map(({ of, text }) => `${parameter(of).label} ${text}`)
    .join(' ');
  const isAsked = met(scanned, 'deeds.logs') && !met(scanned, 'manner.askHow', 'deeds.reminds');
  const isDone =
    kind === 'log' || kind === 'cycle' || given.next.some(({ command }) => command.startsWith('remind'));
  if (!isAsked || isDone || readings === '') return given;
  return {
    ...led('Not logged yet.', given),
    next: [action(say('ask.logThese'), 'log add', { readings }), ...given.next],
  };
}
