import { say } from '../../../core/wording/say.ts';
import { answer } from '../../answer.ts';
import { action } from '../../calls.ts';
import { tankAction } from '../../tank/offer.ts';
import { heardOf } from '../heard.ts';
import type { Row } from '../row.ts';
import { tankSaid } from './tank-setup.ts';

/** Letters that the first line has room for. */
const MOST_HEARD = 75;

/** What only tells is noted for the question it belongs to. */
export const toldRows: readonly Row[] = [
  {
    kind: 'told',
    label: 'ask.kindTold',
    uses: [],
    keepsAll: true,
    answer: (frame, { keep }) => {
      const heard = heardOf(frame.slots);
      const isNew = frame.slots.volume !== undefined && keep?.tankInUse() === undefined;
      const isShort = heard !== '' && heard.length <= MOST_HEARD;
      return answer({
        headline: isShort
          ? `I keep in mind: ${heard}. Tell me more, or ask what you want to know.`
          : 'I keep that in mind. Tell me more, or ask what you want to know.',
        read: heard === '' || isShort ? [] : [heard],
        next: [
          ...(isNew ? [tankAction(say('tank.keepMyTank'), tankSaid(frame))] : []),
          action(say('triage.looksWrong'), 'triage', {}),
          action(say('help.whatICanDo'), 'help', {}),
        ],
      });
    },
  },
];
