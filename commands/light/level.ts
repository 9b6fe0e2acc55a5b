import { Problem } from '../../core/problem.ts';
import { clean } from '../../core/quantity/clean.ts';
import { fixed } from '../../core/quantity/format.ts';
import { readPar, readSetting, type Read } from './words.ts';
import { say } from '../../core/wording/say.ts';

/** Two light levels in one unit: PAR at the coral, or per cent of the lamp's power. */
export interface Levels {
  readonly kind: 'light' | 'share';
  readonly now: Read;
  readonly goal: Read;
}

/** Reads both as PAR or both as per cent; one without a unit takes the other's, and two without are PAR. */
export function readLevels(nowText: string, goalText: string): Levels {
  const kinds = new Set([kindOf(nowText), kindOf(goalText)]);
  if (kinds.has('light') && kinds.has('share')) {
    throw new Problem(say('light.oneParOtherLamp'), {
      field: 'goal',
      given: `${nowText} and ${goalText}`,
      hint: say('light.lightDimTurnsOne'),
    });
  }
  const kind = kinds.has('share') ? 'share' : 'light';
  const read = (text: string, field: string): Read => {
    return kind === 'light' ? readPar(text, field) : readSetting(text, field);
  };
  return { kind, now: read(nowText, 'now'), goal: read(goalText, 'goal') };
}

function kindOf(text: string): Levels['kind'] | undefined {
  const withoutPercent = clean(text).replaceAll(/%|per ?cent|pct/g, '');
  if (/[a-zµ]/.test(withoutPercent)) return 'light';
  return withoutPercent === clean(text) ? undefined : 'share';
}

/** "108 PAR" or "43.4 %", to the places a plan goes to. */
export function levelText(kind: Levels['kind'], value: number): string {
  return `${fixed(value, 3)} ${kind === 'light' ? 'PAR' : '%'}`;
}
