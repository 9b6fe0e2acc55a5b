import { compoundsFor } from '../../core/dosing/compound.ts';
import { numbersReadIn, type ForeignReading } from '../../core/language/tongue/readings.ts';
import type { Unread } from '../../core/language/tongue/tongues.ts';
import { parameter } from '../../core/water/parameter.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { personAction } from '../urgent/hurt.ts';
import { foreignWords } from './foreign-words.ts';

/** Sums that are offered beside the two buttons for emergencies, so that all are in one row. */
const MOST_SUMS = 3;
const MOST_UNUSED = 6;
const REST_UNREAD = 'the words of your message were not read, and nothing is said about these numbers';

/**
 * What is said to a message in another language: that only English is read, what to do where somebody is hurt, and
 * what could be worked out with the numbers found. Never how the readings stand: the sentence around them is unknown.
 */
export function foreignAnswer(text: string, tongue: Unread): Answer {
  const words = foreignWords[tongue];
  const { readings, volume, unused } = numbersReadIn(text, tongue);
  const sums = readings.flatMap((reading) => sumOf(reading, volume, tongue) ?? []);
  return answer({
    headline: words.reads,
    read: [...readings.map(shown), ...(volume === undefined ? [] : [`water ${volume}`]), REST_UNREAD],
    unused: unused.slice(0, MOST_UNUSED).map((number) => `"${number}"`),
    steps: [words.emergency],
    next: [
      { ...personAction(), label: both(words.hurt, personAction().label) },
      action(both(words.urgent, say('urgent.goingWrong')), 'urgent', {}),
      ...sums.slice(0, MOST_SUMS),
    ],
  });
}

/** The sum a reading could be for, the goal asked first; undefined where there is none. */
function sumOf(reading: ForeignReading, volume: string | undefined, tongue: Unread): NextAction | undefined {
  const { id, text } = reading;
  const words = foreignWords[tongue];
  const input = { of: parameter(id).label, now: text, volume };
  const askVolume = volume === undefined ? (['volume'] as const) : [];
  const now = [text, volume].filter((each) => each !== undefined).join(', ');
  const label = (sum: string): string => say('ask.foreignSum', { sum, parameter: parameter(id).label, now });
  if (id === 'salinity')
    return action(
      say('ask.foreignReading', { sum: both(words.salinity, say('ask.everyScale')), reading: text }),
      'salinity convert',
      { reading: text },
    );
  if (id === 'nitrate' || id === 'phosphate') {
    const changes = label(both(words.changes, say('ask.waterChanges')));
    return action(changes, 'waterchange goal', input, ['goal', 'share', ...askVolume]);
  }
  if (compoundsFor(id).length === 0) return undefined;
  const dose = label(both(words.dose, say('ask.dose')));
  return action(dose, 'dose amount', input, ['goal', 'with', ...askVolume]);
}

function shown({ id, text }: ForeignReading): string {
  return `${parameter(id).label} ${text}`;
}

function both(foreign: string, english: string): string {
  return foreign === '' ? english : `${foreign} / ${english}`;
}
