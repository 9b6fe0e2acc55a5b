import { is } from '../../core/words/mention.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';

/** "phone says 9000 lux under my blue led, what PAR is that?" */
export const luxIntent: Intent = (heard, context) => {
  const lux = heard.mentions.find((m) => is(m, 'illuminance'));
  if (lux === undefined) return undefined;
  return call('light lux', { reading: lux.text, lamp: lampOf(heard.text) }, context);
};

/** Lamp words in a sentence. "Blue LED" says too little: most such lamps mix white in, so every LED stays open. */
function lampOf(text: string): string | undefined {
  if (/\bblue\b|\bleds?\b/.test(text)) return 'led';
  if (/\bhalides?\b/.test(text)) return 'halide';
  if (/\bt5\b|\bfluorescents?\b/.test(text)) return 'fluorescent';
  return /\bsun(?:light)?\b|\bdaylight\b/.test(text) ? 'daylight' : undefined;
}

/** "I have 200 PAR, 5-8 h or 12-16 h?": the daily total. */
export const hoursIntent: Intent = (heard, context) => {
  const par = heard.mentions.find((m) => is(m, 'light'));
  if (par === undefined || !says(heard, String.raw`(?:\d+ ?)?(?:h|hrs?|hours?)`, 'photoperiod', 'long'))
    return undefined;
  return call('light hours', { reading: par.text }, context);
};
