import { coralsIn } from '../../../core/words/corals.ts';
import type { OptionsSchema } from '../../command.ts';
import { checkCoralsCommand } from '../../coral/check.ts';
import { listCoralsCommand } from '../../coral/list.ts';
import { mapCoralsCommand } from '../../coral/map.ts';
import { call } from '../call.ts';
import { says, type Intent } from '../intent.ts';

const ASKED = [
  [
    mapCoralsCommand,
    [
      '(?:show|draw|make|see)(?: me)? (?:the |my |a )?(?:coral |tank |reef )?map',
      'map of (?:my|the) (?:tank|reef|corals)',
    ],
  ],
  [
    checkCoralsCommand,
    [
      '(?:check|review|judge) (?:on )?(?:all )?(?:of )?my (?:corals?|placement|coral placement)',
      'are (?:any of )?my corals (?:too close|ok|okay|fine|placed|well placed)',
    ],
  ],
  [
    listCoralsCommand,
    [
      '(?:list|show)(?: me)? (?:all )?my corals?',
      'where are my corals',
      '(?:what|which) corals (?:do i have|have i got|are in my tank)',
    ],
  ],
] as const;

/** "check my corals", "where are my corals", "show the map": for the asker alone. */
export const mineIntent: Intent = (heard, context) => {
  if (context.keep === undefined || coralsIn(heard.text).length > 0) return undefined;
  const asked = ASKED.find(([, words]) => says(heard, ...words));
  return asked === undefined ? undefined : call<OptionsSchema>(asked[0], {}, context);
};
