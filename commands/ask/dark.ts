import { coralsIn } from '../../core/words/corals.ts';
import { answer } from '../answer.ts';
import { isTrouble } from './coral/named.ts';
import { says, type Intent } from './intent.ts';

const DARK = [
  '(?:without|no|with ?out|w/o) (?:any )?lights?',
  'in (?:the |total |full )?dark(?:ness)?',
  'lights? (?:is |are |was |were )?(?:out|off|broke|broken|died|dead) (?:for|about)',
  'blackout',
] as const;
const ASKS = [
  'how long',
  'how many days',
  'can',
  'will',
  'ok(?:ay)?',
  'survive',
  'live',
  'last',
  'harm',
  'safe',
  'days?',
] as const;
/** Common practice: what a power cut or a lamp on its way back may last without harm. */
const HARMLESS_DAYS = 3;

/** "how long can corals go without light": a few days, and what to do meanwhile. */
export const darkIntent: Intent = (heard) => {
  const isAsked = says(heard, ...DARK) && says(heard, ...ASKS) && !isTrouble(heard);
  const isOfCorals = says(heard, 'corals?', 'sps', 'lps', 'softies', 'reef', 'frags?', 'zoas?');
  if (!isAsked || (!isOfCorals && coralsIn(heard.text).length === 0)) return undefined;
  const days = Number(/\b(\d{1,2}) ?(?:d|days?)\b/.exec(heard.text)?.[1] ?? Number.NaN);
  const verdict =
    days <= HARMLESS_DAYS
      ? `${days} ${days === 1 ? 'day' : 'days'}: no harm. `
      : days > HARMLESS_DAYS
        ? `${days} days is long: get some light over them sooner. `
        : '';
  return answer({
    headline: `${verdict}Two to three days without light do corals no harm (common practice). Beyond that they pale, those that need most light first.`,
    steps: [
      'Water movement and warmth count more than light: see to the pumps and the heater first.',
      'For longer, put up any lamp: even a dim one, or a bright room without direct sun, helps.',
      'Feed little meanwhile: without light the tank takes up less.',
      'When the light is back, begin at about half and go up over one to two weeks.',
    ],
    cautions: ['No blackout against algae with corals that need much light.'],
    sources: ['practice'],
  });
};
