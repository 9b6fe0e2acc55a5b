import { coralsIn } from '../../../core/words/corals.ts';
import type { Heard } from '../../../core/words/hear.ts';
import { is } from '../../../core/words/mention.ts';
import { call } from '../call.ts';
import { says, type Intent } from '../intent.ts';
import { isTrouble } from './named.ts';

const KINDS = '(?:corals?|softies|lps|sps|zoas?|mushrooms?|anemones?|frags?)';
const WHICH = [
  `(?:which|what)(?: kinds? of| sort of| are| r| would be)?(?: some| the| good| nice| easy| hardy| low ?light)* ${KINDS}`,
  `(?:first|starter|beginner|beginners|easy|easiest|hardy|hardiest|good|best) (?:first |starter |beginner )?${KINDS}`,
  `(?:suggest|recommend)(?:s|ed|ions?|ation)?.{0,40}${KINDS}`,
  `${KINDS} (?:for|suited to) (?:a |my |the )?(?:beginners?|newbies?|first tank|nano|low light|shady|sand)`,
] as const;

/** "which coral for a beginner, low flow on the sand": what fits, from what the sentence says of the spot. */
export const whichIntent: Intent = (heard, context) => {
  if (heard.said.length > 0 || isTrouble(heard) || !says(heard, ...WHICH)) return undefined;
  const wish = coralsIn(heard.text).map(({ name }) => name);
  if (wish.length > 0 && !says(heard, 'which', 'what', 'suggest', 'recommend')) return undefined;
  return call(
    'coral suited',
    {
      level: levelOf(heard),
      par: heard.mentions.find((m) => is(m, 'light'))?.text,
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
};

function levelOf(heard: Heard): string | undefined {
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
    )
  ) {
    return 'first year';
  }
  return says(heard, 'experienced', 'many years', 'advanced', 'expert') ? 'many years' : undefined;
}

function flowOf(heard: Heard): string | undefined {
  if (says(heard, '(?:low|little|gentle|weak) (?:light (?:and|,)? ?)?flow')) return 'low';
  if (says(heard, '(?:high|strong|heavy|lots of) flow')) return 'high';
  return says(heard, '(?:medium|moderate) flow') ? 'medium' : undefined;
}

function kindOf(heard: Heard): string | undefined {
  if (says(heard, 'soft(?:ies|y)?', 'soft corals?', 'leathers?')) return 'soft';
  if (says(heard, 'lps', 'large ?polyp')) return 'large-polyp';
  if (says(heard, 'sps', 'small ?polyp')) return 'small-polyp';
  return says(heard, 'anemones?') ? 'anemone' : undefined;
}
