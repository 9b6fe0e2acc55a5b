import type { Heard } from './hear.ts';
import { is, type Mention } from './mention.ts';
import { leadOf, tailOf } from './roles.ts';

/** The water volume a member gave for the tank, as text `readQuantity` takes. */
export interface TankVolume {
  readonly text: string;
  /** True where the words say it is the water itself, not the size of the glass. */
  readonly net: boolean;
  readonly mention: Mention;
}

/** Volumes too small to be a tank: they measure a dose. */
const SMALL = /(?:ml|tsps?|teaspoons?|tbsps?|tablespoons?|cups?|oz|ounces?|cc)$/;
/** Whether a number can be the size of a tank. */
export function isTankSize(mention: Mention): boolean {
  return is(mention, 'volume') && !SMALL.test(mention.text);
}

/** Water that moves: evaporation, top-off, a change. */
const MOVING =
  /^\s*(?:evaporates?|evaporation|(?:a|per|every|\/)\s*(?:day|week|month)|daily|weekly|monthly|each|every|water ?change|wc\b|change|changes|of (?:top ?off|ro|rodi|limewater|mix))/;
const NET_TAIL = /^\s*(?:(?:of\s+)?(?:actual|real|net|total)?\s*(?:of\s+)?water\b|net\b|actual\b)/;
const NET_ALONE = /^\s*net\b/;
const NET_LEAD =
  /\b(?:holds?|net|actually|really|actual)(?:\s+(?:only|like|about|around|maybe|holds?|is))*\s*$/;
/** "went from 60 gal to 120 gal": the first is no longer the tank. */
const FORMER = /\b(?:went|moved|upgrad\w+|swapped|changed) from (?:a |my )?$/;
/** "on my 55": a tank called by its size. */
const MINE_LEAD = /\b(?:on|in|for)\s+(?:my|a|the)\s*$/;
const MAYBE_LEAD = /\b(?:maybe|so|only|about|prob|probably|like|roughly)\s*$/;

/**
 * The tank volume said in a sentence: the net volume where one is named ("120 gal tank, maybe 100 of water" is
 * 100 gal), else the first volume that can be a tank. Undefined when none was said: it is never made up.
 */
export function tankVolume(heard: Heard): TankVolume | undefined {
  const { text, mentions } = heard;
  const candidates = mentions.flatMap((mention, index) => {
    const tail = tailOf(text, mentions, index);
    const lead = leadOf(text, mentions, index);
    if (MOVING.test(tail)) return [];
    if (isTankSize(mention)) {
      return [{ text: mention.text, net: NET_TAIL.test(tail) || NET_LEAD.test(lead), mention }];
    }
    if (!is(mention, 'bare')) return [];
    if (NET_ALONE.test(tail) || (NET_TAIL.test(tail) && (MAYBE_LEAD.test(lead) || NET_LEAD.test(lead))))
      return [{ text: mention.text, net: true, mention }];
    return MINE_LEAD.test(lead) ? [{ text: mention.text, net: false, mention }] : [];
  });
  const now = candidates.find(({ mention }) => !FORMER.test(text.slice(0, mention.start)));
  const best = candidates.find((c) => c.net) ?? now ?? candidates[0];
  if (best === undefined || is(best.mention, 'volume')) return best;
  const unit = mentions.find(isTankSize)?.text.replace(/^[\d.,\s]+/, '');
  return unit === undefined ? best : { ...best, text: `${best.text} ${unit}` };
}
