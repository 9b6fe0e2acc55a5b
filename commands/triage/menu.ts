import { symptomCard, type SymptomId } from '../../core/care/symptoms/cards.ts';
import { groupIds, groups, type GroupId } from '../../core/care/symptoms/group.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action, type TextCall } from '../calls.ts';
import { personAction } from '../urgent/hurt.ts';
import { symptomsOf } from './seen.ts';

/** Options that a button hands on as they are. */
export type Kept = TextCall<'triage'>['input'];

/** Most buttons of a message, less the one for people. */
const MOST_OFFERED = 9;

/** The first menu: where is it seen? People first. */
export function groupMenu(kept: Kept, notKnown?: string): Answer {
  return answer({
    tone: 'question',
    headline: notKnown === undefined ? say('triage.whatDoYouSee') : say('triage.whereIsItSeen'),
    read: notKnown === undefined ? [] : [`seen: ${notKnown}`],
    steps: notKnown === undefined ? [] : [say('triage.postAPhoto')],
    sources: ['practice'],
    next: [
      personAction(),
      action(say('urgent.goingWrong'), 'urgent', {}),
      symptomAction('many at once', kept),
      ...groupIds.map((group) => action(groups[group], 'triage', { seen: group, ...kept })),
    ],
  });
}

/** What is seen within a group, or which of several the words can mean. */
function symptomMenu(ids: readonly SymptomId[], kept: Kept): Answer {
  return answer({
    headline: say('triage.whichIsNearest'),
    tone: 'question',
    sources: ['practice'],
    next: [...ids.slice(0, MOST_OFFERED).map((id) => symptomAction(id, kept)), personAction()],
  });
}

export function symptomsMenu(group: GroupId, kept: Kept): Answer {
  return symptomMenu(symptomsOf(group), kept);
}

export function symptomAction(id: SymptomId, kept: Kept): NextAction {
  return action(symptomCard(id).label, 'triage', { seen: id, ...kept });
}
