import { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';

/** Letters of a text that is named again. */
const SHOWN = 40;

/** "volume "abc" (I could not read that as a volume)": what was given, named where it is left out. */
export function notUsed(name: string, given: unknown, why: string | Problem): string {
  const reason = why instanceof Problem ? reasonOf(why) : why;
  return `${name} "${shown(given)}" (${reason.replace(/\.$/, '')})`;
}

/** What a text is read as; where it cannot be read it is named in `left`, and the answer goes on without it. */
export function readOrName<T>(
  name: string,
  given: string | undefined,
  read: (text: string) => T,
  left: string[],
): T | undefined {
  if (given === undefined) return undefined;
  try {
    return read(given);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    left.push(notUsed(name, given, error));
    return undefined;
  }
}

/** What is wrong with a text, with what would be read instead. */
function reasonOf({ message, choices }: Problem): string {
  return choices.length === 0 ? message : say('urgent.writeItSo', { choices: choices.join(' or ') });
}

/** One line, and not all of a long text. */
function shown(given: unknown): string {
  const text = String(given)
    .replace(/[\s\p{C}]+/gu, ' ')
    .trim();
  const letters = [...text];
  return letters.length <= SHOWN ? text : `${letters.slice(0, SHOWN).join('')}...`;
}
