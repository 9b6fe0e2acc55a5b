import type { UrgentId } from '../../core/care/urgent/cards.ts';
import { NO_TREATMENT } from '../../core/care/hurt/card.ts';
import type { SentenceKey } from '../../core/wording/language.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { urgentAction } from './action.ts';
import { personAction } from './hurt.ts';

/** Second menus, by the words of the option: a message holds ten buttons. */
export const menus = {
  'something got in': {
    label: 'urgent.gotIn',
    headline: 'urgent.whatGotIn',
    ids: [
      'overdose',
      'other overdose',
      'burst heater',
      'metal in the water',
      'bleach or spray',
      'copper or medicine',
      'untreated tap water',
      'shredded anemone',
    ],
  },
  'something else': {
    label: 'urgent.badWater',
    headline: 'urgent.whichElse',
    ids: ['ammonia', 'salinity crash', 'out of the water', 'dying animal', 'zoanthid rock'],
  },
} as const satisfies Record<
  string,
  { readonly label: SentenceKey; readonly headline: SentenceKey; readonly ids: readonly UrgentId[] }
>;

export type MenuId = keyof typeof menus;

const direct: readonly UrgentId[] = [
  'fire or sparks',
  'mains fault',
  'power cut',
  'oxygen loss',
  'flood',
  'overheating',
  'cold water',
];

/** What is happening? People first; then one of the second menus. */
export function menuAnswer(id?: MenuId): Answer {
  if (id !== undefined) return asked(say(menus[id].headline), menus[id].ids.map(urgentAction));
  return asked(say('urgent.whatIsHappening'), [
    ...direct.map(urgentAction),
    ...(Object.keys(menus) as readonly MenuId[]).map((menu) =>
      action(say(menus[menu].label), 'urgent', { what: menu }),
    ),
  ]);
}

function asked(headline: string, next: readonly NextAction[]): Answer {
  return answer({
    headline,
    tone: 'question',
    dangers: ['Water near mains: switch off at the breaker from a dry place before you touch anything.'],
    cautions: [NO_TREATMENT],
    sources: ['practice'],
    next: [personAction(), ...next],
  });
}
