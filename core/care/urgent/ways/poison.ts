import type { Way } from '../../said.ts';
import type { UrgentId } from '../cards.ts';
import { TANK } from '../way-words.ts';

/** Something foreign that broke or got in. An anemone in a named pump is heard elsewhere. */
// prettier-ignore
export const poisonWays = {
  'burst heater': [
    { all: [['heater'], ['burst', 'explod\\w*', 'crack(?:ed|s)?', 'shatter\\w*', 'broke(?:n)?', 'blew', 'smash\\w*', 'leaking', 'split', 'popped', 'melted']], not: ['heater (?:is |was |has |just )*broken? .{0,30}(?:\\d ?[cf]|degrees|cold)', String.raw`(?:dropp\w*|fell|down|is|at|only|tank|water|temp) (?:is |to |at )*(?:[56]\d|1\d) ?(?:f|c|degrees)?(?![\d.]).{0,30}heater (?:is |was |has |just )*broken?`, 'cold.{0,30}heater (?:is |was |has |just )*broken?', '(?:can|could|do|does|will|might) (?:a |an |my |the )?heaters?', '(?:in|out of) the box', 'return it', 'refund', 'warranty', 'arrived', 'in (?:shipping|transit)'] },
    { all: [['thermometer', 'phone', 'light ?bulb', 'bulb'], ['broke', 'broken', 'shatter\\w*', 'smash\\w*', 'fell', 'dropped', 'mercury'], [String.raw`(?:in|into) (?:the |my |our )?(?:tank|sump|water|aquarium|reef|display)`]], not: ['(?:calibrat\\w*|new|which|best|replace)'] },
    { all: [['coins?', 'screws?', 'batter(?:y|ies)', 'penny', 'pennies', 'nails?', 'bolts?', 'hose clamps?', 'brass \\w+', 'copper (?:wire|pipe|fitting|coin)'], ['fell', 'dropped', 'found', 'threw', 'thrown', 'put', 'rust\\w*', 'corrod\\w*', 'in (?:the|my) (?:tank|sump|water)']] },
    { all: [['magnets?'], ['rust\\w*', 'corrod\\w*', 'crack\\w*']] },
  ],
  'bleach or spray': [
    { all: [['bleach'], ['accidentally', 'by (?:accident|mistake)', 'spill\\w*', 'pour\\w*', 'got', 'fell', 'splash\\w*', 'drip\\w*', 'rins\\w*', 'in the water', 'into']], not: ['(?:corals?|acros?|sps|lps|they|it) (?:will |can |may |could )?bleach'] },
    { all: [['air freshener', 'aerosols?', '(?:insect|bug|fly|roach|flea) spray', 'hair ?spray', 'window cleaner', '(?:glass|window|furniture|cleaning|kitchen|bathroom) spray', 'glass cleaner', 'oven cleaner', 'scented (?:candle|oil)s?', 'room (?:spray|scent)', 'cleaner', 'soap', 'detergent', 'perfume', 'pesticides?', 'disinfectant', 'paint fumes', '(?:bug|flea|fly|mosquito|insect) (?:bomb|fogger|killer|treatment)', 'fogger', 'insecticide', 'deodorant', 'polish', 'bleach'], ['in', 'into', 'near', 'over', 'by', 'next to', 'sprayed', 'spilled', 'used', 'room'], TANK], not: ['magnet(?:ic)? cleaner', 'glass cleaner magnet', 'algae cleaner', 'can i', 'is it (?:safe|ok|okay)', 'clean (?:my|the|a|out)', '(?:corals?|acros?|sps|lps|they|it|will|can|may|could|lights?) bleach', 'cleaner (?:shrimps?|wrasses?|crew|clams?|fish)'] },
    { all: [['shampoo', 'soap', 'detergent', 'lotion', 'sanitizer', 'sanitiser', 'sun ?screen', 'paint', 'beer', 'wine', 'vodka', 'cola', 'coffee', 'milk', 'juice', 'perfume', 'cleaner', 'chemicals?', 'gasoline', 'oil', 'chlorine', 'chloramine', 'vinegar', 'whole (?:can|jar|tub) of (?:fish )?food'], ['poured', 'dumped', 'spilled', 'spilt', 'fell', 'dropped', 'dripped', 'threw', 'got', 'squirted', String.raw`put (?:\w+ ){0,4}by (?:accident|mistake)`, 'by (?:accident|mistake)', 'my (?:kid|son|daughter|toddler|friend) put'], ['(?:in|into) (?:the|my|our|a) (?:\\w+ )?(?:tank|sump|aquarium|water|reef)', 'got in', 'tap water with']], not: ['can i', 'is it (?:safe|ok|okay)', 'should i', 'how much', '(?:vodka|vinegar) dos\\w*', 'cleaner (?:shrimps?|wrasses?|crew|clams?|fish)', 'magnet(?:ic)? cleaner'] },
    { all: [['exterminator', 'pest control', 'pesticides?', 'insecticide', '(?:bug|insect|fly|roach|flea|mosquito|ant|wasp|spider) (?:spray|bomb|fogger)', 'fogger', 'fumigat\\w*', 'spray(?:ed|ing) (?:for|against) (?:the )?(?:\\w+ )?(?:roach\\w*|bugs?|ants?|fleas?|flies|wasps?|spiders?|mosquito\\w*|moths?|mice|termites?|bed ?bugs?|insects?|weeds)'], ['sprayed', 'used', 'came', 'house', 'room', 'apartment', 'treated']], not: ['can i', 'is it (?:safe|ok|okay)', 'should i', 'before'] },
    { all: [['sprayed', 'painted (?:the |my )?(?:room|wall|ceiling)', 'painting (?:the |my )?(?:room|wall|ceiling)'], [...TANK, 'fish', 'corals?']] },
  ],
  'shredded anemone': [
    { all: [[String.raw`(?:pump|power ?head|wave ?maker|flow pump|overflow|intake|filter) (?:just |has |had )*(?:ate|eaten|shredded|chopped|sucked|swallowed|killed|minced|blended|got) (?:up |in )?(?:my |the |our )?(?:\w+ )?(?:anemones?|nems?|bta|rbta|bubble ?tip)`]], not: ['guards?', 'prevent', 'avoid'] },
    { all: [['anemones?', 'nems?', 'bta', 'rbta', 'bubble ?tips?'], ['shredded', 'chopped up', 'minced', 'blended', 'cut to pieces']], not: ['pumps?', 'power ?heads?', 'wave ?makers?', 'overflow', 'flow pumps?', 'intake'] },
    { all: [['cucumber', 'sea apple'], ['nuked', 'shredded', 'chopped', 'power ?head', 'wave ?maker', 'pump', 'overflow', 'died', 'dead', 'dying', 'guts', 'eviscerat\\w*']], not: ['guards?', 'prevent', 'avoid', 'can i', 'will', 'could', 'if'] },
  ],
} as const satisfies Partial<Record<UrgentId, readonly Way[]>>;
