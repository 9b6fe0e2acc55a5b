import { anyOf, saidIn, type Way } from '../said.ts';
import type { UrgentId } from './cards.ts';

/** Plans, purchases and what is over are no emergency. */
const NOT = anyOf([
  'remind',
  'how (?:do i|to|can i|would i) (?:prevent|avoid|stop)',
  'prevent\\w*',
  '(?:which|what|what size|best) (?:heater|magnet|cleaner|generator|spray|pump|doser|chiller|breaker)',
]);

const TANK = ['tank', 'sump', 'water', 'reef', 'aquarium', 'display', 'temp(?:erature)?'] as const;
const FISH = ['fish(?:es)?', 'clown(?:s|fish)?', 'tangs?', 'goby', 'wrasses?', 'everything', 'everyone', 'they'] as const; // prettier-ignore
const DOSED = ['alk\\w*', 'd?kh', 'lime ?water', 'lime', 'kalk\\w*', 'calcium', 'ca', 'soda ash', 'baking soda', 'bicarb\\w*', 'two part', 'dos(?:er|ing pump)', 'carbonate'] as const; // prettier-ignore

/** How members say each emergency, those that can kill people first. The anemone and the person are heard elsewhere. */
const ways: readonly (readonly [UrgentId, readonly Way[]])[] = [
  [
    'flood',
    [
      { all: [['flood(?:ed|ing)?'], ['floor', 'room', 'house', 'carpet', 'kitchen', 'basement', 'living room', 'downstairs', 'everywhere', 'sump', 'tank', 'socket', 'plugs?']], not: ['flood ?lights?', 'flooded (?:my |the )?(?:display|tank|sump) with'] },
      { all: [['water'], ['(?:all over|on) (?:the |my |our )?(?:floor|carpet|wall sockets?|sockets?|plugs?|power strip|cables?)', 'everywhere', 'ceiling']] },
      { all: [[String.raw`(?:tank|sump|seam|glass|silicone)(?: (?:is|has|just|started|seam))* (?:leak(?:ing|ed|s)?|crack(?:ed|ing)?|burst|split|broke|shattered)`]] },
      { all: [['wet', 'dripping', 'water'], ['power strip', 'extension (?:lead|cord)', 'sockets?', 'breaker', 'outlet']], not: ['wet skim\\w*'] },
    ],
  ],
  [
    'burst heater',
    [
      { all: [['heater'], ['burst', 'explod\\w*', 'crack(?:ed|s)?', 'shatter\\w*', 'broke(?:n)?', 'blew', 'smash\\w*', 'leaking', 'split', 'popped', 'melted']] },
      { all: [['coins?', 'screws?', 'batter(?:y|ies)', 'penny', 'pennies', 'nails?', 'bolts?', 'hose clamps?', 'brass \\w+', 'copper (?:wire|pipe|fitting|coin)'], ['fell', 'dropped', 'found', 'rust\\w*', 'corrod\\w*']] },
      { all: [['magnets?'], ['rust\\w*', 'corrod\\w*', 'crack\\w*']] },
    ],
  ],
  [
    'bleach or spray',
    [
      { all: [['bleach'], ['spill\\w*', 'pour\\w*', 'got', 'fell', 'splash\\w*', 'drip\\w*', 'rins\\w*', 'in the water', 'into']], not: ['(?:corals?|acros?|sps|lps|they|it) (?:will |can |may |could )?bleach'] },
      { all: [['air freshener', 'aerosols?', '(?:insect|bug|fly|roach|flea) spray', 'hair ?spray', 'window cleaner', 'oven cleaner', 'cleaner', 'soap', 'detergent', 'perfume', 'pesticides?', 'disinfectant', 'paint fumes'], ['in', 'into', 'near', 'over', 'by', 'next to', 'sprayed', 'spilled', 'used', 'room'], TANK], not: ['magnet(?:ic)? cleaner', 'glass cleaner magnet', 'algae cleaner', 'cleaner (?:shrimps?|wrasses?|crew|clams?|fish)'] },
      { all: [['sprayed', 'painted (?:the |my )?(?:room|wall|ceiling)', 'painting (?:the |my )?(?:room|wall|ceiling)'], [...TANK, 'fish', 'corals?']] },
    ],
  ],
  [
    'power cut',
    [
      {
        all: [['power (?:cut|outage|failure)s?', "power(?:'?s| is| was| has been| been| went| has gone)? (?:out|gone|down|still out)", 'power (?:has |just |suddenly )*(?:went|gone|failed)', 'power is off', 'outages?', 'no (?:power|electricity)', '(?:lost|losing) (?:power|electricity)', 'without (?:power|electricity)', '(?:took|knocked) (?:(?:the|our|my|all) )?power out', '(?:took|knocked) out (?:(?:the|our|my|all) )?power', 'electricity (?:is |went |has been )?(?:out|off|gone|down)', 'black ?out', 'brown ?out']],
        not: ['(?:dinos?|cyano\\w*|algae|lights?|coral\\w*|day) black ?out', 'black ?out (?:for|against|the|period|method)', 'black ?out.{0,20}(?:dinos?|cyano|algae)', '(?:dinos?|cyano\\w*|algae).{0,30}black ?out', '(?:coral|acro|monti|it|sps)\\w* (?:\\w+ )?brown(?:ed)? ?out'],
      },
    ],
  ],
  [
    'oxygen loss',
    [
      { all: [FISH, ['gasp(?:ing|s)?', 'gulping', 'suffocat\\w*', 'at the (?:surface|top) (?:breathing|gasping|panting)']] },
      { all: [['no|low|lack of'], ['oxygen', 'o2'], FISH] },
    ],
  ],
  [
    'overdose',
    [
      { all: [['over ?dos(?:e|ed|ing)', 'dosed (?:way |far )?too much', 'double dosed', 'doser (?:got |is |was )?(?:stuck|ran on|went crazy|malfunction\\w*|dumped)', '(?:dumped|emptied|siphoned|poured) (?:in )?(?:the |a |my )?(?:whole|entire|all)', 'added (?:way |far )?too much', 'ten times too much', 'twice the dose'], DOSED], not: ["won'?t overdose", 'without overdos\\w*', 'can (?:i|you) overdose', 'scared of (?:an )?overdos\\w*'] },
    ],
  ],
  [
    'salinity crash',
    [
      { all: [['salinity (?:has |just |suddenly )?(?:crash\\w*|plummet\\w*|tanked)', '(?:ato|auto ?top ?off|top ?off|float (?:switch|valve)) (?:has |got |was |just |is )?(?:stuck|dumped|emptied|ran all night|failed|overfilled)', 'filled (?:it |the tank )?(?:up )?with (?:fresh|ro|tap)\\w* ?(?:water)? (?:by mistake|by accident|instead)']] },
    ],
  ],
  [
    'overheating',
    [
      { all: [['heater (?:is |got |has |was )?(?:been )?stuck(?: on)?', 'over ?heat(?:ed|ing|s)', '(?:tank|water) (?:is |was |got |getting |too |way |so |really )+(?:hot|warm)', 'chiller (?:died|broke|failed|stopped)', 'heat ?wave']], not: ['pumps? (?:is |are )?over ?heat\\w*', 'lights? over ?heat\\w*', 'driver over ?heat\\w*'] },
    ],
  ],
  [
    'cold water',
    [
      { all: [['heater (?:has |just |is |was )?(?:died|dead|fail(?:ed|ing)?|stopped|quit|unplugged|not (?:working|heating|on))', '(?:tank|water) (?:is |was |got |getting |too |way |so |really |freezing )+cold', 'boiler (?:died|broke)']] },
    ],
  ],
  [
    'ammonia',
    [
      { all: [['ammonia'], ['spik(?:e|ed|ing)', 'through the roof', 'poison\\w*', 'burn(?:s|ing)?', 'shot up', 'emergency', 'very high', 'sky ?high']], not: ['cycl\\w*', 'fishless', 'bleach'] },
    ],
  ],
]; // prettier-ignore

const tests = ways.map(([id, said]) => ({ id, test: saidIn(said) }));

/** The emergency that a cleaned text speaks of, the most dangerous first; undefined for none. */
export function urgentIn(text: string): UrgentId | undefined {
  return NOT(text) ? undefined : tests.find(({ test }) => test(text))?.id;
}
