import type { Heard } from '../../core/words/hear.ts';
import { coralsIn } from '../../core/words/corals.ts';
import { is, type Mention } from '../../core/words/mention.ts';
import { roleOf, leadOf } from '../../core/words/roles.ts';
import { bandAnswer } from '../light/band-answer.ts';
import { dimCommand } from '../light/dim.ts';
import { hoursCommand } from '../light/hours.ts';
import { luxCommand } from '../light/lux.ts';
import { rampCommand } from '../light/ramp.ts';
import { call } from './call.ts';
import { coralParAnswer } from './coral/par.ts';
import { says, type Intent } from './intent.ts';

/** "phone says 9000 lux under my blue led, what PAR is that?" */
export const luxIntent: Intent = (heard, context) => {
  const lux = heard.mentions.find((m) => is(m, 'illuminance'));
  if (lux === undefined) return undefined;
  return call(luxCommand, { reading: lux.text, lamp: lampOf(heard.text) }, context);
};

/** Lamp words in a sentence. "Blue LED" says too little: most such lamps mix white in, so every LED stays open. */
function lampOf(text: string): 'led' | 'halide' | 'fluorescent' | 'daylight' | undefined {
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
  const hours = heard.text.match(/\b\d{1,2}(?:\.\d+)? ?(?:h|hrs?|hours?)\b/g) ?? [];
  const isOne = hours.length === 1 && !/\d ?(?:-|to|or|\/) ?\d/.test(heard.text);
  return call(hoursCommand, { reading: par.text, hours: isOne ? hours[0] : undefined }, context);
};

/** "50 % gives 120 par, want 200" or "from 100 par to 200": the lamp setting, or the raise week by week. */
export const raiseLightIntent: Intent = (heard, context) => {
  const [reading, second] = heard.mentions.filter((m) => is(m, 'light'));
  if (reading === undefined) return undefined;
  const from =
    second === undefined ? heard.mentions.find((m) => is(m, 'bare') && isFrom(heard, m)) : undefined;
  if (from !== undefined && from.start < reading.start && from.value < reading.value)
    return call(rampCommand, { now: `${from.text} PAR`, goal: reading.text }, context);
  const goal = second ?? heard.mentions.find((m) => is(m, 'bare') && isGoal(heard, m));
  if (goal === undefined) return undefined;
  const target = is(goal, 'light') ? goal.text : `${goal.text} PAR`;
  const at = heard.mentions.find((m) => is(m, 'share'))?.text;
  if (at !== undefined) return call(dimCommand, { reading: reading.text, at, goal: target }, context);
  return call(rampCommand, { now: reading.text, goal: target }, context);
};

function isFrom(heard: Heard, mention: Mention): boolean {
  return /\bfrom\s*(?:about |around )?$/.test(heard.text.slice(0, mention.start));
}

function isGoal(heard: Heard, mention: Mention): boolean {
  const index = heard.mentions.indexOf(mention);
  return roleOf(leadOf(heard.text, heard.mentions, index), '') === 'goal';
}

/** "is 300 par too much?": which band that is, and what it depends on. */
export const bandIntent: Intent = (heard, context) => {
  const par = heard.mentions.find((m) => is(m, 'light'));
  if (par === undefined) return undefined;
  const ofCoral = coralsIn(heard.text).length === 1 ? coralParAnswer(heard, context) : undefined;
  if (ofCoral !== undefined) return ofCoral;
  return bandAnswer(par);
};
