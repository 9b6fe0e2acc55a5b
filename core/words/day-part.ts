import { WEEKDAY } from '../weekday.ts';

/** A part of the day, with the hour taken where none is said. Common practice, no source. */
export const partHours = { morning: 9, afternoon: 15, evening: 19, night: 21 } as const;

export type DayPart = keyof typeof partHours;

/** A text whose "this morning", "tonight", "last night", "friday evening" says only the day any more, and the part. */
export interface Parted {
  readonly text: string;
  readonly part: DayPart | undefined;
  /** The words that said it. */
  readonly words: string;
}

const PART = 'morning|afternoon|evening|night';
const TONIGHT = /\b(?:tonight|overnight)\b/i;
const OF_THIS_DAY = new RegExp(String.raw`\b(?:earlier )?this (${PART})\b`, 'i');
const OF_LAST_DAY = new RegExp(String.raw`\blast (night|evening)\b`, 'i');
const OF_EACH_DAY = new RegExp(String.raw`\b(every|each) (${PART})\b`, 'i');
const OF_DAY = new RegExp(String.raw`\b(today|tomorrow|yesterday|${WEEKDAY}),? (?:in the )?(${PART})\b`, 'i');
const IN_THE = new RegExp(String.raw`\b(?:in the|at) (${PART})\b`, 'i');

/** Takes the part of the day out of a text. Check: "friday evening at 7" -> "friday at 7", evening. */
export function parted(text: string): Parted {
  const tonight = TONIGHT.exec(text);
  if (tonight !== null) {
    const [words] = tonight;
    return words.toLowerCase() === 'tonight'
      ? made(text, words, 'today', 'evening')
      : made(text, words, 'yesterday', 'night');
  }
  const [here, last, each, day, general] = [OF_THIS_DAY, OF_LAST_DAY, OF_EACH_DAY, OF_DAY, IN_THE].map(
    (pattern) => pattern.exec(text),
  );
  if (here) return made(text, here[0], 'today', here[1]);
  if (last) return made(text, last[0], 'yesterday', last[1]);
  if (each) return made(text, each[0], 'every day', each[2]);
  if (day) return made(text, day[0], day[1] ?? '', day[2]);
  if (general) return made(text, general[0], '', general[1]);
  return { text, part: undefined, words: '' };
}

/** An hour of twelve by the part of the day: 7 in the evening is 19, 12 at night 0. Hours past 12 stay. */
export function hourIn(part: DayPart | undefined, hour: number): number {
  if (part === undefined || part === 'morning' || hour > 12) return hour;
  if (part === 'night' && (hour === 12 || hour < 5)) return hour % 12;
  return hour === 12 ? 12 : hour + 12;
}

function made(text: string, words: string, day: string, part: string | undefined): Parted {
  const left = text.replace(words, day).replace(/\s+/g, ' ').trim();
  return { text: left, part: part?.toLowerCase() as DayPart | undefined, words };
}
