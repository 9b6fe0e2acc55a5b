import { findParameter, type ParameterId } from '../../core/water/parameter.ts';
import { askedText } from './asked-plan.ts';
import { askedParameters, testText } from './test.ts';

/** What a reminder is about, out of the words left over. */
export interface WishText {
  readonly text: string;
  readonly parameters: readonly ParameterId[];
}

/** "test alk and ca" is a test of both, anything else a task in the member's own words. @throws Problem for no text. */
export function readWishText(words: string, field: string): WishText {
  const text = askedText(words.replace(/^[\s,;:.-]*(?:to |of |about )?/i, ''), field);
  const subject = /^(?:test|measure|check)\s+(?:for |my |the )*(.+)$/i.exec(text)?.[1];
  const names = subject?.split(/\s*(?:,|;|\/|\+|&|\band\b|\s)\s*/i).filter((name) => name !== '') ?? [];
  if (names.length === 0 || names.some((name) => findParameter(name) === undefined))
    return { text, parameters: [] };
  const parameters = askedParameters(names.join(', '));
  return { text: testText(parameters), parameters };
}
