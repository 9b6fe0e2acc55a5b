import { lampBand } from '../../core/corals/light-need.ts';
import { USUAL_RAISE_PERCENT } from '../../core/light/ramp.ts';
import { subjectCard } from '../../core/care/subjects/cards.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { subjectAnswer } from '../primer/subject-answer.ts';
import { TOO_MUCH_ACTION, TOO_MUCH_IS_COMMONER, TOO_MUCH_SIGNS } from './words.ts';
import { say } from '../../core/wording/say.ts';

/** A lamp's setting is no light: a wide band, and a meter. */
export function settingAnswer(setting: string | undefined): Answer {
  const [weak, strong] = [lampBand('weak'), lampBand('strong')];
  return answer({
    headline: `A setting alone does not tell the light at a coral: try a weak lamp at ${weak.lowPercent} to ${weak.highPercent} %, a strong one at ${strong.lowPercent} to ${strong.highPercent} % (project rule).`,
    read: setting === undefined ? [] : [`${setting} as the setting of the lamp`],
    steps: [
      'Begin at the low end of the band and borrow a PAR meter: PAR at the coral is what counts.',
      `Up by about ${USUAL_RAISE_PERCENT} % of what it is a week, never to the top in one go.`,
      TOO_MUCH_SIGNS,
      TOO_MUCH_ACTION,
    ],
    cautions: [TOO_MUCH_IS_COMMONER],
    sources: ['practice'],
    next: [action(say('light.fromParReading'), 'light dim', {}, ['reading', 'at', 'goal'])],
  });
}

/** Another lamp: below the light there was, then up by a tenth a week. */
export function newLampAnswer(): Answer | undefined {
  const card = subjectCard('light-lamp', 'start percent');
  if (card === undefined) return undefined;
  const given = subjectAnswer(card);
  return {
    ...given,
    next: [...given.next, action(say('light.weekByWeek2'), 'light ramp', {}, ['now', 'goal'])],
  };
}
