import { primer, primers } from '../../core/care/primers/cards.ts';
import { cardAnswer } from '../primer/card-answer.ts';
import type { Intent } from './intent.ts';

const ASKS =
  /^(?:(?:hi|hey|hello|so|ok|please|pls|can (?:you|someone|anyone|somebody)|could (?:you|someone|anyone)|i'm new|im new|noob question|newbie question|quick question)[,.:!]*\s+)*(?:(?:please|pls)\s+)?(?:what(?:'s| is|s| are| does)|whats|wat(?:'?s| is)|eli5|define|explain|tell (?:me|us) about|how (?:do|does|to|should|can|long|often (?:do|should) (?:i|we|you))|why (?:is|are|does|do|should)|show (?:me )?(?:the )?card|card (?:on|for|about)|primer (?:on|for|about)|info (?:on|about)|anything on)\b|^(?:is|are) (?:\w+ ){1,4}(?:dangerous|toxic|poisonous|harmful|caustic|safe)\b/;
/** Longer sentences ask something particular. */
const MOST_WORDS = 14;

/** Words for each card, the longest first, so that "salt water" is not found inside "mixing salt water". */
const named = primers
  .flatMap(({ id, names }) => [id.toLowerCase(), ...names].map((name) => ({ id, name })))
  .sort((a, b) => b.name.length - a.name.length)
  .map(({ id, name }) => ({
    id,
    pattern: new RegExp(String.raw`(?<![a-z0-9-])${name.replace('-', '[- ]?')}(?![a-z0-9-])`),
  }));

/** "what is limewater", "explain PAR", "how do I acclimate a coral": the card on it. */
export const primerIntent: Intent = ({ text, mentions }) => {
  if (mentions.length > 0 || !ASKS.test(text) || text.split(' ').length > MOST_WORDS) return undefined;
  const found = named.find(({ pattern }) => pattern.test(text));
  return found === undefined ? undefined : cardAnswer(primer(found.id));
};
