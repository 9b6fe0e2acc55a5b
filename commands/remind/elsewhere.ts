import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';

const BETWEEN_US = 'Reminders are between you and me';
const WHERE = 'press the button, or tell me in a direct message';

const ONLY_YOU = 'Only you see the answer of the button.';

const list = action('My reminders', 'remind list', {});

/** How a reminder is stopped, said where nothing of the member's may be touched. */
export function stopElsewhere(): Answer {
  return answer({
    headline: `${BETWEEN_US}. To stop one: ${WHERE}. Nothing is stopped yet.`,
    cautions: [ONLY_YOU],
    steps: [
      'For good: /remind remove, with its name from the list. It asks once more before it is gone.',
      'For a while: /remind pause. One time only: /remind skip.',
      'A warning about a reading, not a reminder: /log watch.',
    ],
    next: [
      action('Stop one for good', 'remind remove', {}, ['reminder']),
      action('Pause them all', 'remind pause', {}),
      list,
    ],
  });
}

/** How they are paused. */
export function pauseElsewhere(): Answer {
  return answer({
    headline: `${BETWEEN_US}. To pause them: ${WHERE}. Nothing is paused yet.`,
    cautions: [ONLY_YOU],
    steps: ['One of them: /remind pause, with its name and a day. All of them: /remind pause.'],
    next: [action('Pause them', 'remind pause', {}, ['until']), list],
  });
}

/** How they begin again. */
export function resumeElsewhere(): Answer {
  return answer({
    headline: `${BETWEEN_US}. To begin them again: ${WHERE}. Nothing is changed yet.`,
    cautions: [ONLY_YOU],
    steps: ['One of them: /remind resume, with its name. All of them: /remind resume.'],
    next: [action('Begin again', 'remind resume', {}), list],
  });
}
