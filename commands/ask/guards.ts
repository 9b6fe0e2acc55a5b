import { Problem } from '../../core/problem.ts';
import { readSalinity } from '../../core/water/salinity-reading.ts';
import { saidOf, type Heard } from '../../core/words/hear.ts';
import type { Answer } from '../answer.ts';
import { remarkOn } from '../salinity/print.ts';
import { remarkFirst } from '../salinity/remark-first.ts';

/** What is true of every answer to plain words, whichever command gave it. */
export function guarded(heard: Heard, given: Answer): Answer {
  return notKept(heard, remarkFirst(remarkIn(heard), given));
}

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
  /(?:^|[.,;!?] *|\b(?:please|pls|and|to|you|then) )log\b(?! ?[:\d])|\b(?:log (?:it|this|that|these|them|my)|logged$|note (?:down|it|this|that|these)|record(?:ed)?|saved?|stored?|(?:write|jot|put) (?:it |this |that |these |them )?down|enter(?:ed)?|register|remember(?: (?:that|i))?|keep (?:it|this|that|these|them|track))\b|^(?:please |pls )?note\b/;
/** The words of the wish around the readings. */
const WISH =
  /\b(?:please|pls|can you|could you|and|log(?:ged)?|note|record(?:ed)?|saved?|stored?|write|jot|put|down|enter(?:ed)?|register|remember|keep track of|keep|track|it|this|that|these|them|i (?:tested|measured|dosed))\b[ ,:]*/g;

/** Asked about keeping, not asked to keep. */
const HOW = /\b(?:how|where|can i|should i|do i|reminds?)\b/;

/** Plain words keep no reading: where that was asked, it is said first, with the button that does it. */
function notKept(heard: Heard, given: Answer): Answer {
  if (!ASKS_TO_KEEP.test(heard.text) || heard.said.length + heard.compounds.length === 0) return given;
  if (HOW.test(heard.text)) return given;
  if (given.next.some(({ command }) => command.startsWith('remind'))) return given;
  const readings = heard.text.replace(WISH, '').replace(/^[ ,:]+|[ ,:]+$/g, '');
  return {
    ...given,
    headline: `Not logged yet. ${given.headline}`,
    next: [{ label: 'Log these', command: 'log add', input: { readings } }, ...given.next],
  };
}
