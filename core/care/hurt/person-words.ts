import { saidIn } from '../said.ts';
import { families } from './families.ts';
import { ill } from './person/ill.ts';
import { poisoned } from './person/poisoned.ts';
import { shock } from './person/shock.ts';
import { wound } from './person/wound.ts';
import { plainlyTold } from './plainly-told.ts';

/**
 * Whether a cleaned text speaks of a person or a pet that is hurt or ill: rather once too often. Animals of the tank that
 * swallow something, corals that get a shock of light and questions about what might hurt are left out.
 */
export function isPersonHurt(text: string): boolean {
  return tellsOfHurt(text) && !UNHURT.test(text);
}

const tellsOfHurt = saidIn([...shock, ...wound, ...poisoned, ...ill, ...plainlyTold, ...families]);

/** Said to have hurt nobody, or in a figure of speech. */
const UNHURT =
  /\b(?:(?:nobody|no ?one|none of us) (?:got|was|is|were|gets?)|some slack|stared at|from (?:his|her|its|their) own|daylight robbery)\b/;
