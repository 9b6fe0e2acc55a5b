import type { FlowBand } from '../../../core/corals/entry.ts';
import type { CoralGroup } from '../../../core/corals/kind.ts';
import type { Level } from '../../../core/corals/suits.ts';
import { coralsIn } from '../../../core/words/corals.ts';
import type { Heard } from '../../../core/words/hear.ts';
import { is } from '../../../core/words/mention.ts';
import { suitedCommand } from '../../coral/suited.ts';
import { call } from '../call.ts';
import { says, type Intent } from '../intent.ts';
import { gentleAnswer } from '../../coral/gentle-answer.ts';
import { isTrouble } from './named.ts';

const KINDS = '(?:corals?|softies|lps|sps|zoas?|mushrooms?|anemones?|frags?)';
const WHICH = [
  `(?:which|what)(?: kinds? of| sort of| are| r| would be)?(?: some| the| good| nice| easy| hardy| low ?light)* ${KINDS}`,
  `(?:first|starter|beginner|beginners|easy|easiest|hardy|hardiest|good|best) (?:first |starter |beginner )?${KINDS}`,
  `(?:suggest|recommend)(?:s|ed|ions?|ation)?.{0,40}${KINDS}`,
  `${KINDS} (?:for|suited to) (?:a |my |the )?(?:beginners?|newbies?|first tank|nano|low light|shady|sand)`,
] as const;

const MAY = [
  'can i (?:keep|have|add|get|put|try|buy)',
  'should i (?:add|get|put|buy)',
  '(?:too (?:new|young|soon|early)|ready|okay?) for',
  'good to add',
] as const;
/** A tank that has not run for long, as members say it. */
const YOUNG = [
  '(?:new|young|fresh|freshly cycled) (?:tank|reef|nano|setup|system)',
  String.raw`(?:\d+|one|two|three|four|five|six|a|few|couple)(?: of)?[ -]?(?:days?|weeks?|wks?|months?|mos?)[ -]old`,
  'months? old',
  'just cycled',
] as const;
const GENTLE = [
  "(?:dont|don't|do not|wont|won't|doesnt|doesn't|not) sting",
  '(?:non|least|not|less)[ -]?(?:stinging|aggressive)',
  'peaceful',
] as const;

/** "which coral for a beginner, low flow on the sand": what fits, from what the sentence says of the spot. */
export const whichIntent: Intent = (heard, context) => {
  if (heard.said.length > 0 || isTrouble(heard)) return undefined;
  const wish = coralsIn(heard.text).map(({ name }) => name);
  const forYoung = wish.length > 0 && says(heard, ...MAY) && says(heard, ...YOUNG);
  if (!forYoung && !says(heard, ...WHICH)) return undefined;
  if (!forYoung && wish.length > 0 && !says(heard, 'which', 'what', 'suggest', 'recommend')) return undefined;
  if (wish.length === 0 && says(heard, ...GENTLE)) return gentleAnswer();
  const band = lightBandOf(heard);
  const given = call(
    suitedCommand,
    {
      level: levelOf(heard),
      par: heard.mentions.find((m) => is(m, 'light'))?.text ?? band?.par,
      flow: flowOf(heard),
      ground: says(heard, 'on (?:the |my )?rocks?')
        ? 'rock'
        : says(heard, 'sand(?:bed| bed)?')
          ? 'sand'
          : undefined,
      kind: kindOf(heard),
      wish: wish.length === 0 ? undefined : wish.join(', '),
    },
    context,
  );
  return band === undefined ? given : { ...given, read: [...given.read, band.read] };
};

/** The middle of soft light (40 to 80 PAR) and of bright light (160 to 320): project rule. */
function lightBandOf(heard: Heard): { readonly par: string; readonly read: string } | undefined {
  if (heard.mentions.some((m) => is(m, 'light'))) return undefined;
  if (says(heard, '(?:low|little|weak|dim|poor)[ -]?(?:light(?:ing)?|par)', 'shade', 'shady', 'dark'))
    return {
      par: '60 PAR',
      read: 'low light taken as 60 PAR, the middle of soft light, 40 to 80 (project rule)',
    };
  return says(heard, '(?:high|strong|bright)[ -]?(?:light(?:ing)?|par)')
    ? {
        par: '240 PAR',
        read: 'high light taken as 240 PAR, the middle of bright light, 160 to 320 (project rule)',
      }
    : undefined;
}

function levelOf(heard: Heard): Level | undefined {
  if (
    says(
      heard,
      'beginners?',
      'newbies?',
      'noobs?',
      'first',
      'starter',
      'new to',
      'starting',
      'just started',
      'eas(?:y|iest)',
      'hard(?:y|iest)',
      ...YOUNG,
    )
  ) {
    return 'first year';
  }
  return says(heard, 'experienced', 'many years', 'advanced', 'expert') ? 'many years' : undefined;
}

function flowOf(heard: Heard): FlowBand | undefined {
  if (says(heard, '(?:low|little|gentle|weak) (?:light (?:and|,)? ?)?flow')) return 'low';
  if (says(heard, '(?:high|strong|heavy|lots of) flow')) return 'high';
  return says(heard, '(?:medium|moderate) flow') ? 'medium' : undefined;
}

function kindOf(heard: Heard): CoralGroup | undefined {
  if (says(heard, 'soft(?:ies|y)?', 'soft corals?', 'leathers?')) return 'soft';
  if (says(heard, 'lps', 'large ?polyp')) return 'large-polyp';
  if (says(heard, 'sps', 'small ?polyp')) return 'small-polyp';
  return says(heard, 'anemones?') ? 'anemone' : undefined;
}
