import { judge } from '../../core/claims/judge.ts';
import { withoutTank } from '../../core/claims/rule-text.ts';
import type { Heard } from '../../core/words/hear.ts';
import type { Answer } from '../answer.ts';
import { claimCommand } from '../claim.ts';
import { notKnown } from '../claim/not-known.ts';
import type { OwnContext } from '../command.ts';
import { call } from './call.ts';
import type { Intent } from './intent.ts';

/** Words of one who passes a rule on, or asks whether it is so. */
const PASSED_ON =
  /\b(?:is it (?:really |actually )?(?:true|right|correct)|(?:some(?:one|body)|a (?:mate|friend|guy|member)|people|they|(?:my|the) (?:mate|friend|buddy|shop|store|club)) (?:told me|tells? me|says?|said|keeps? saying|claims?|swears?)|i (?:was told|heard|read|keep hearing)|(?:read|heard|saw) (?:that|somewhere|online)|rule of thumb|old rule|myth|supposedly|apparently)\b/;
const ASKED =
  /\b(?:right|true|correct|a myth|true or false|is that (?:right|so|true)|is this (?:right|true))\s*\?+\s*$/;
/** Surely asks for a verdict, so that saying "I do not know that rule" is the honest answer. */
const SURELY =
  /\b(?:is it (?:really |actually )?(?:true|a myth)|true or false|rule of thumb|is that a myth)\b/;

/** "is it true that ...", "someone told me ...", "..., right?": the verdict on a rule that is known. */
export const passedOnIntent: Intent = (heard, context) =>
  PASSED_ON.test(heard.text) || ASKED.test(heard.text) ? claimed(heard, context) : undefined;

/** A known rule stated without a word around it, where no other question fits. */
export const bareRuleIntent: Intent = (heard, context) =>
  claimed(heard, context) ?? (SURELY.test(heard.text) ? notKnown() : undefined);

/** The verdict on a rule that is known; undefined where the sentence holds none. */
export function claimed({ given }: Heard, context: OwnContext): Answer | undefined {
  const { rule, volume } = withoutTank(given);
  if (judge(rule) === undefined) return undefined;
  return call(claimCommand, { rule, volume }, context);
}
