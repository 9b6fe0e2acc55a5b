import type { SymptomCard } from './card.ts';
import { ammoniaSeen } from './cards/ammonia-seen.ts';
import { anemoneOff } from './cards/anemone-off.ts';
import { baseRecedes } from './cards/base-recedes.ts';
import { brownDust } from './cards/brown-dust.ts';
import { brownJelly } from './cards/brown-jelly.ts';
import { brownStrings } from './cards/brown-strings.ts';
import { cloudy } from './cards/cloudy.ts';
import { deadStrip } from './cards/dead-strip.ts';
import { featherOrBubbles } from './cards/feather-or-bubbles.ts';
import { fishBreathesFast } from './cards/fish-breathes-fast.ts';
import { fishSpots } from './cards/fish-spots.ts';
import { fishSwimsOddly } from './cards/fish-swims-oddly.ts';
import { fishThin } from './cards/fish-thin.ts';
import { fishWound } from './cards/fish-wound.ts';
import { flatBrownWorms } from './cards/flat-brown-worms.ts';
import { fleshPeels } from './cards/flesh-peels.ts';
import { glassAnemones } from './cards/glass-anemones.ts';
import { greenHair } from './cards/green-hair.ts';
import { leatherWax } from './cards/leather-wax.ts';
import { manyAtOnce } from './cards/many-at-once.ts';
import { paleAllOver } from './cards/pale-all-over.ts';
import { paleOnTop } from './cards/pale-on-top.ts';
import { polypsClosed } from './cards/polyps-closed.ts';
import { polypsLeave } from './cards/polyps-leave.ts';
import { redSlime } from './cards/red-slime.ts';
import { shrunken } from './cards/shrunken.ts';
import { slimy } from './cards/slimy.ts';
import { smallAnimals } from './cards/small-animals.ts';
import { stretched } from './cards/stretched.ts';
import { surfaceFilm } from './cards/surface-film.ts';
import { turnsBrown } from './cards/turns-brown.ts';
import { useChanges } from './cards/use-changes.ts';
import { whiteSpots } from './cards/white-spots.ts';
import { whiteTips } from './cards/white-tips.ts';
import { zoanthidsShut } from './cards/zoanthids-shut.ts';

/** Every symptom by a short word that a button and a typed option can hold. */
export const symptomCards = {
  'many at once': manyAtOnce,
  'pale all over': paleAllOver,
  'pale on top': paleOnTop,
  'turns brown': turnsBrown,
  'white tips': whiteTips,
  'base recedes': baseRecedes,
  'flesh peels': fleshPeels,
  'brown jelly': brownJelly,
  'dead strip': deadStrip,
  'polyps float': polypsLeave,
  'waxy leather': leatherWax,
  'zoanthids shut': zoanthidsShut,
  'anemone off': anemoneOff,
  'polyps closed': polypsClosed,
  stretched,
  shrunken,
  slimy,
  'white spots': whiteSpots,
  flatworms: flatBrownWorms,
  'glass anemones': glassAnemones,
  'small bugs': smallAnimals,
  'brown dust': brownDust,
  'red slime': redSlime,
  'brown strings': brownStrings,
  'green hair': greenHair,
  'feather algae': featherOrBubbles,
  'fish gasping': fishBreathesFast,
  'fish spots': fishSpots,
  'fish thin': fishThin,
  'fish swims oddly': fishSwimsOddly,
  'fish wound': fishWound,
  cloudy,
  'surface film': surfaceFilm,
  'ammonia seen': ammoniaSeen,
  'alkalinity use': useChanges,
} as const satisfies Record<string, SymptomCard>;

export type SymptomId = keyof typeof symptomCards;

export const symptomIds = Object.keys(symptomCards) as readonly SymptomId[];

export function symptomCard(id: SymptomId): SymptomCard {
  return symptomCards[id];
}
