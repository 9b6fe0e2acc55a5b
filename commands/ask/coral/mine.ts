import { coralsIn } from '../../../core/words/corals.ts';
import { call } from '../call.ts';
import { says, type Intent } from '../intent.ts';

const ASKED = [
  ['coral map', ['(?:show|draw|make|see)(?: me)? (?:the |my |a )?(?:coral |tank |reef )?map', 'map of (?:my|the) (?:tank|reef|corals)']],
  ['coral check', ['(?:check|review|judge) (?:on )?(?:all )?(?:of )?my (?:corals?|placement|coral placement)', 'are (?:any of )?my corals (?:too close|ok|okay|fine|placed|well placed)']],
  ['coral list', ['(?:list|show)(?: me)? (?:all )?my corals?', 'where are my corals', '(?:what|which) corals (?:do i have|have i got|are in my tank)']],
] as const; // prettier-ignore

/** "check my corals", "where are my corals", "show the map": for the asker alone. */
export const mineIntent: Intent = (heard, context) => {
  if (context.keep === undefined || coralsIn(heard.text).length > 0) return undefined;
  const asked = ASKED.find(([, words]) => says(heard, ...words));
  return asked === undefined ? undefined : call(asked[0], {}, context);
};
