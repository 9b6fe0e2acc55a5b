import { coralsIn } from '../../../core/words/corals.ts';
import { is, type Mention } from '../../../core/words/mention.ts';
import { parAnswer } from '../../coral/par-answer.ts';
import { rangeCommand } from '../../light/range.ts';
import { call } from '../call.ts';
import { says, type Intent } from '../intent.ts';

const ASKS = [
  'what par',
  'which par',
  'how much (?:par|light)',
  'how bright',
  '(?:par|light) (?:for|do|does)',
  'lighting for',
  'too? (?:much|bright|dim|strong)',
  'too (?:high|low|little)',
  'enough',
  'acclimat(?:e|ing|ion)',
] as const;
/** Asked of one reading: is it all right? */
const OK = ['ok(?:ay)?', 'good', 'fine', 'safe', 'right', 'alright'] as const;

/** "zoas: what par? I get 60 on the sand and 250 up top": the range of the coral, and each reading against its start. */
export const coralParIntent: Intent = (heard, context) => {
  const asksOne = says(heard, ...OK) && heard.mentions.some((m) => is(m, 'light'));
  if (!asksOne && !says(heard, ...ASKS)) return undefined;
  if (!says(heard, 'par', 'light(?:ing)?', 'ppfd', 'bright', 'dim')) return undefined;
  return coralParAnswer(heard, context);
};

/** The light of the coral that is named, whatever is asked of it. */
export const coralParAnswer: Intent = (heard, context) => {
  if (heard.mentions.some((m) => is(m, 'illuminance') || is(m, 'share'))) return undefined;
  const [named] = coralsIn(heard.text);
  if (named === undefined) return undefined;
  const { entries } = named;
  const readings = heard.mentions.filter(isReading);
  if (entries.every(({ photosynthetic }) => !photosynthetic))
    return call(rangeCommand, { coral: named.name, reading: readings[0]?.text }, context);
  return parAnswer(named, readings);
};

function isReading(mention: Mention): boolean {
  return (is(mention, 'light') || is(mention, 'bare')) && mention.value >= 5 && mention.value <= 2500;
}
