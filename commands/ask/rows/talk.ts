import { met, type Met } from '../../../core/language/met.ts';
import type { Scanned } from '../../../core/language/tokens.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import {
  allRight,
  beginning,
  foreign,
  goodNews,
  hello,
  notMine,
  standing,
  unreadable,
  welcome,
} from '../../help/talk.ts';
import type { Row } from '../row.ts';

/** What is said without a question on a tank. */
export const talkRows: readonly Row[] = [
  {
    kind: 'greeting',
    label: 'help.whatICanDo',
    uses: [],
    answer: ({ reading }, context) =>
      unread(reading.given, reading.scanned) ?? said(reading.scanned, context),
  },
  {
    kind: 'off-topic',
    label: 'ask.kindOffTopic',
    uses: [],
    answer: ({ reading }) => unread(reading.given, reading.scanned) ?? notMine(),
  },
];

/** Signs, pictures and links only, or another language. */
function unread(given: string, scanned: Scanned): Answer | undefined {
  return unreadable(given) ?? (met(scanned, 'manner.foreign') ? foreign() : undefined);
}

/** Words of a mere hello, at most. Own choice. */
const MOST_HELLO = 8;

function said(scanned: Scanned, context: OwnContext): Answer {
  const asked: readonly (readonly [readonly Met[], () => Answer])[] = [
    [['manner.asksBot'], hello],
    [['manner.newcomer', 'deeds.setsUp'], beginning],
    [['manner.thanks'], welcome],
    [['manner.over'], goodNews],
    [['parts.tank', 'places.tank', 'manner.continuation'], () => standing(context)],
    [['manner.plea', 'manner.askHow', 'manner.askWhich', 'manner.may', 'manner.greeting'], hello],
    [['manner.agreement', 'manner.farewell', 'manner.joking', 'looks.good'], allRight],
  ];
  const found = asked.find(([classes]) => met(scanned, ...classes));
  if (found !== undefined) return found[1]();
  // Who tells a story and asks nothing needs no introduction.
  return scanned.tokens.length > MOST_HELLO && !scanned.text.includes('?') ? allRight() : hello();
}
