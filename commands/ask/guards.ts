import { Problem } from '../../core/problem.ts';
import { readSalinity } from '../../core/water/salinity-reading.ts';
import { withRemark } from '../../core/water/salinity-remark.ts';
import { saidOf, type Heard } from '../../core/words/hear.ts';
import type { Answer } from '../answer.ts';
import { remarkOn } from '../salinity/print.ts';

/** What is true of every answer to plain words, whichever command gave it. */
export function guarded(heard: Heard, given: Answer): Answer {
  const isSaid = SAID.test(given.headline);
  return notKept(heard, isSaid ? given : { ...given, headline: withRemark(remarkIn(heard), given.headline) });
}

/** A first line that says of salinity that it is off. */
const SAID = /\bsalinity\b[^;]{0,40}\b(?:low|high|off|below|above)\b|\b(?:low|high) salinity\b/i;

/** The remark on the one salinity said to be that of the tank. */
export function remarkIn(heard: Heard): string | undefined {
  const said = saidOf(heard, 'salinity').filter(({ role }) => role === 'plain');
  const [only] = said;
  if (only === undefined || said.length > 1 || ELSEWHERE.test(heard.text)) return undefined;
  const { text } = only.mention;
  try {
    return remarkOn(readSalinity(text, { field: 'salinity' }));
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}

/** Salinity of something else than the tank. */
const ELSEWHERE =
  /\b(?:standard|calibrat\w*|solution|fluid|new (?:salt ?)?(?:water|mix)|mix(?:ed|ing)?|batch|bucket|bin|quarantine|qt|hypo\w*|brackish|hatch\w*|bag(?:ged)? water|shop|store|lfs)\b/;

const ASKS_TO_KEEP =
  /^(?:(?:please|pls|can you|could you|hey|ok|so|and)[ ,]+)*(?:log|note|record|save|store|write down|jot down|put down|keep track of|remember|track|register)\b/;

/** Plain words keep no reading: where that was asked, it is said first, with the button that does it. */
function notKept(heard: Heard, given: Answer): Answer {
  if (!ASKS_TO_KEEP.test(heard.text) || heard.said.length === 0) return given;
  if (given.next.some(({ command }) => command.startsWith('remind'))) return given;
  const readings = heard.text.replace(ASKS_TO_KEEP, '').replace(/^[ ,:]+/, '');
  return {
    ...given,
    headline: `Not logged yet. ${given.headline}`,
    next: [{ label: 'Log these', command: 'log add', input: { readings } }, ...given.next],
  };
}
