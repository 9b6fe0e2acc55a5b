import type { LampStrength } from '../../../core/corals/light-need.ts';
import type { Origin } from '../../../core/corals/scene.ts';
import type { Heard } from '../../../core/words/hear.ts';
import { coralsIn } from '../../../core/words/corals.ts';
import { is } from '../../../core/words/mention.ts';
import { rangeCommand } from '../../light/range.ts';
import { call } from '../call.ts';
import { says, type Intent } from '../intent.ts';
import { isTrouble, respelt } from './named.ts';

const LIGHT = [
  'par',
  'ppfd',
  'lights?',
  'lighting',
  'lamps?',
  'leds?',
  'bright(?:er|ness)?',
  'dim(?:med|mer)?',
  'intensity',
] as const;
const NO_METER = [
  String.raw`(?:no|without|dont have|don't have|havent got|lack) (?:a |an |any )?(?:par )?meter`,
] as const;
const NEEDS = [
  'light(?:ing)? (?:needs?|requirements?|levels?)',
  'light acclimat(?:e|ing|ion)',
  'acclimat(?:e|ing|ion) to (?:the |my )?light',
  'par range',
] as const;

/** Asked of a name as it is written, these are answered elsewhere. */
const ASKS = ['what par', 'how much (?:par|light)', 'how bright', '(?:par|light) (?:for|do|does)'] as const;

/** "torch coral par?" */
const SHORT = /^(?:[a-z'-]+ ){1,3}(?:par|light|lighting)\s*\??$/;

/** "wild torch, lamp at 60% reads 180 par": the range of a coral with where it grew, the lamp's setting or no meter. */
export const lightForIntent: Intent = (heard, context) => {
  if (!says(heard, ...LIGHT) || isTrouble(heard)) return undefined;
  const [written, other] = coralsIn(heard.text);
  const named = written ?? respelt(heard);
  if (named === undefined || other !== undefined) return undefined;
  const readings = heard.mentions.filter((m) => is(m, 'light'));
  if (readings.length > 1 || heard.mentions.some((m) => is(m, 'illuminance'))) return undefined;
  const origin = originOf(heard);
  const setting = heard.mentions.find((m) => is(m, 'share'))?.text;
  const told =
    origin !== undefined ||
    setting !== undefined ||
    says(heard, ...NO_METER, ...NEEDS) ||
    SHORT.test(heard.text) ||
    (written === undefined && says(heard, ...ASKS));
  if (!told) return undefined;
  const lamp = setting === undefined && !says(heard, ...NO_METER) ? undefined : lampOf(heard);
  return call(
    rangeCommand,
    { coral: named.name, origin, reading: readings[0]?.text, setting, lamp },
    context,
  );
};

/** Where the piece grew, as members say it. */
function originOf(heard: Heard): Origin | undefined {
  if (says(heard, 'maricultured?', 'mari', 'sea ?farmed', 'ocean farmed')) return 'maricultured';
  if (says(heard, 'deep ?water', 'from (?:the )?deep', 'deeper slopes?')) return 'deep';
  if (says(heard, 'wild(?: ?caught)?', 'wild colony', 'wc')) return 'wild';
  if (says(heard, 'aquacultured?', 'captive ?(?:grown|bred)', 'tank ?(?:grown|raised|bred)'))
    return 'tank-grown';
  return undefined;
}

function lampOf(heard: Heard): LampStrength | undefined {
  if (says(heard, 'cheap', 'budget', 'low ?cost', 'small', 'nano', 'weak', 'clip ?on')) return 'weak';
  return says(heard, 'very strong', 'strong', 'powerful', 'high ?(?:end|power)', 'expensive')
    ? 'strong'
    : undefined;
}
