import { BLEACH_GAS } from '../../core/care/hazards.ts';
import { symptomCard, type SymptomId } from '../../core/care/symptoms/cards.ts';
import { NO_MEDICINE } from '../../core/care/urgent/people.ts';
import { answer, type Answer } from '../answer.ts';
import { urgentAction } from '../urgent/action.ts';
import { symptomAction } from './menu.ts';

/** What to do instead of a medicine, with the first step for what was seen. */
export function noMedicine(seen: readonly SymptomId[]): Answer {
  return answer({
    headline: NO_MEDICINE,
    steps: [
      ...seen.slice(0, 1).map((id) => symptomCard(id).first),
      'Test salinity, temperature, ammonia and pH first, and say here what they read: bad water looks like illness.',
      'Move a sick fish to a tank of its own for treatment: many medicines kill corals, shrimps and the filter.',
      'Post a clear photo and what changed lately, so that keepers can help you tell what it is.',
    ],
    dangers: [
      'Never into the display. Copper and many other treatments kill invertebrates and stay in rock and sand.',
    ],
    sources: ['practice'],
    next: [...seen.slice(0, 3).map((id) => symptomAction(id, {})), urgentAction('copper or medicine')],
  });
}

/** Of peroxide with acid from memory. */
export const NEVER_MIX =
  'Never mix acid or vinegar with bleach or peroxide: poisonous gas, burns to skin, eyes and lungs.';

/** Bleach, lye, acids and the like: no amount for a tank; of two that make a poisonous gas, that first. */
export function noCleaner(isGas: boolean): Answer {
  return answer({
    headline: isGas
      ? `No. ${BLEACH_GAS}`
      : 'Not into a tank: I work out no amounts of bleach, lye, acids or disinfectants.',
    ...cleaning,
    dangers: [isGas ? NEVER_MIX : BLEACH_GAS, NO_TANK, GUARD],
  });
}

export const GUARD = 'Gloves, eye protection, fresh air.';
const NO_TANK = 'Never in a tank, and never on living coral or live rock.';
const cleaning = {
  steps: ['To clean equipment follow the label, rinse well, and let it dry before it goes back.'],
  sources: ['ghs', 'practice'],
} as const;

/** What they ask of whoever cleans equipment with them. */
export const cleaningCare = answer({ headline: GUARD, ...cleaning, dangers: [BLEACH_GAS, NO_TANK] });

/** Peroxide against algae. */
export const noPeroxide = answer({
  headline:
    'I work out no amount of peroxide for a tank: what is passed on has no evidence, and a slip kills shrimps and corals.',
  read: ['hydrogen peroxide against algae; a rule like 1:10 says neither of what nor into what'],
  steps: [
    'Safer: take the rock out, pumps aside and lights off, and treat the patch by hand outside the tank.',
    'Rinse it in tank water and put it back.',
    'Ask first what kind of algae it is: a photo helps, and results differ by kind.',
    'Then what feeds it: read nitrate and phosphate, and look at light and flow.',
  ],
  dangers: [
    'Never use a stronger kind: it burns skin and eyes and is an oxidiser.',
    'Peroxide harms some shrimps, macroalgae and sensitive corals. Never on zoanthids: they can hold palytoxin.',
    'Eye cover and gloves; follow the product label.',
  ],
  sources: ['practice', 'memory', 'ghs'],
});
