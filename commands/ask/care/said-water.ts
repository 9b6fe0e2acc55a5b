import type { Found } from '../../../core/care/symptoms/rank.ts';
import type { Sign } from '../../../core/care/symptoms/sign.ts';
import { readLogged } from '../../../core/log/value.ts';
import { Problem } from '../../../core/problem.ts';
import type { Heard } from '../../../core/words/hear.ts';
import { answer, type Answer, type Fact } from '../../answer.ts';
import { judgedAnswer } from '../../checkup/judged.ts';
import type { OwnContext } from '../../command.ts';
import { readingIntent } from '../readings.ts';
import { notUsed } from '../../urgent/not-used.ts';
import { levelNow } from './alarm.ts';

/** Readings said beside a symptom, judged; undefined where none were. What cannot be read is named, and no more. */
export function waterSaid(heard: Heard, context: OwnContext): Answer | undefined {
  try {
    return judgedWater(heard, context);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return answer({ headline: error.message, read: [notUsed(error.field, error.given ?? '', error)] });
  }
}

function judgedWater(heard: Heard, context: OwnContext): Answer | undefined {
  if (heard.said.length === 0) return undefined;
  const judged = readingIntent(heard, context);
  const salinity = levelNow(heard, 'salinity');
  if (judged !== undefined || salinity === undefined) return judged;
  const { value, notes } = readLogged('salinity', salinity, 'salinity');
  return judgedAnswer({ values: [{ parameter: 'salinity', value }], read: notes });
}

/** What a judged reading of the sentence is a sign of, by its label and verdict. */
const bySide: Readonly<Record<string, Readonly<Partial<Record<string, Sign>>>>> = {
  salinity: { low: 'salinity off', high: 'salinity off', doubtful: 'salinity off' },
  alkalinity: { low: 'alkalinity low', high: 'alkalinity high' },
  temperature: { low: 'cold', high: 'hot' },
  nitrate: { low: 'zero', high: 'rich' },
  phosphate: { low: 'zero', high: 'rich' },
  ammonia: { urgent: 'ammonia' },
  nitrite: { high: 'nitrite' },
};

/** Signs in readings that were said and judged. */
export function signsOfFacts(facts: readonly Fact[]): readonly Found[] {
  return facts.flatMap(({ label, value, verdict = '' }): Found[] => {
    const sign = bySide[label]?.[verdict];
    return sign === undefined ? [] : [{ sign, text: `you said: ${label} ${value}` }];
  });
}
