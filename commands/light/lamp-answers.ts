import { lampBand } from '../../core/corals/light-need.ts';
import { USUAL_RAISE_PERCENT } from '../../core/light/ramp.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { TOO_MUCH_ACTION, TOO_MUCH_IS_COMMONER, TOO_MUCH_SIGNS } from './words.ts';

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
    next: [action('From a PAR reading', 'light dim', {}, ['reading', 'at', 'goal'])],
  });
}

/** Another lamp: low, then up by a tenth a week. */
export function newLampAnswer(): Answer {
  return answer({
    headline: `Begin well below the light they have had, and go up by about ${USUAL_RAISE_PERCENT} % a week: three to four weeks is usual (common practice).`,
    steps: [
      'Best: measure PAR at the corals under the old lamp, set the new one to no more than that, then raise.',
      'Without a meter: begin at about half the setting you mean to end at, or hang the lamp higher, and go by the corals.',
      'A new coral begins at the start of its range: /light range names it for each kind.',
      TOO_MUCH_SIGNS,
      TOO_MUCH_ACTION,
    ],
    cautions: [TOO_MUCH_IS_COMMONER],
    sources: ['practice'],
    next: [action('Week by week', 'light ramp', {}, ['now', 'goal'])],
  });
}
