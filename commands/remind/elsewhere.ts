import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { say } from '../../core/wording/say.ts';

const list = () => action(say('remind.myReminders'), 'remind list', {});

/** How a reminder is stopped, said where nothing of the member's may be touched. */
export function stopElsewhere(): Answer {
  return answer({
    headline: say('remind.stopElsewhere'),
    cautions: [say('remind.onlyYouSee')],
    steps: [
      'For good: /remind remove, with its name from the list. It asks once more before it is gone.',
      'For a while: /remind pause. One time only: /remind skip.',
      'A warning about a reading, not a reminder: /log watch.',
    ],
    next: [
      action(say('remind.stopOneGood'), 'remind remove', {}, ['reminder']),
      action(say('remind.pauseThemAll'), 'remind pause', {}),
      list(),
    ],
  });
}

/** How they are paused. */
export function pauseElsewhere(): Answer {
  return answer({
    headline: say('remind.pauseElsewhere'),
    cautions: [say('remind.onlyYouSee')],
    steps: ['One of them: /remind pause, with its name and a day. All of them: /remind pause.'],
    next: [action(say('remind.pauseThem'), 'remind pause', {}, ['until']), list()],
  });
}

/** How they begin again. */
export function resumeElsewhere(): Answer {
  return answer({
    headline: say('remind.resumeElsewhere'),
    cautions: [say('remind.onlyYouSee')],
    steps: ['One of them: /remind resume, with its name. All of them: /remind resume.'],
    next: [action(say('remind.beginAgain'), 'remind resume', {}), list()],
  });
}
