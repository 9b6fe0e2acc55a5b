import { aboutIntent } from './coral/about.ts';
import { anemonePumpIntent } from './coral/anemone-pump.ts';
import { compareIntent } from './coral/compare.ts';
import { feedingAddsIntent, feedsIntent } from './coral/feeds.ts';
import { groupLightIntent, softBesideStonyIntent } from './coral/groups.ts';
import { growsIntent } from './coral/grows.ts';
import { lightForIntent } from './coral/light-for.ts';
import { mineIntent } from './coral/mine.ts';
import { noPageIntent } from './coral/no-page.ts';
import { pairIntent } from './coral/pair.ts';
import { coralParIntent } from './coral/par.ts';
import { plateIntent } from './coral/plate.ts';
import { spreadingIntent, zoanthidsIntent } from './coral/polyps.ts';
import { shadeIntent } from './coral/shade.ts';
import { shutIntent } from './coral/shut.ts';
import { stretchIntent } from './coral/stretch.ts';
import { whichIntent } from './coral/which.ts';
import type { Intent } from './intent.ts';
import { longerDayIntent, luxOfParIntent, newLampIntent, settingIntent, usualDayIntent } from './lamp.ts';

const intents: readonly Intent[] = [
  mineIntent,
  noPageIntent,
  anemonePumpIntent,
  spreadingIntent,
  plateIntent,
  shutIntent,
  compareIntent,
  shadeIntent,
  pairIntent,
  stretchIntent,
  zoanthidsIntent,
  lightForIntent,
  coralParIntent,
  growsIntent,
  feedingAddsIntent,
  feedsIntent,
  whichIntent,
  softBesideStonyIntent,
  groupLightIntent,
  aboutIntent,
  luxOfParIntent,
  longerDayIntent,
  usualDayIntent,
  settingIntent,
  newLampIntent,
];

/**
 * Where corals may stand and what goes wrong there: the particular before the general. A sentence that asks for a change
 * of the water is left to the sums.
 */
export const placementIntents: readonly Intent[] = intents.map(
  (intent): Intent =>
    (heard, context) =>
      heard.said.some(({ role }) => role === 'goal' || role === 'step' || role === 'use')
        ? undefined
        : intent(heard, context),
);
