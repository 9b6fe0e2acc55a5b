import { roughWords } from '../../core/corals/spot-words.ts';
import { judgeLight } from '../../core/corals/rules/light.ts';
import { READING_RADIUS_CM } from '../../core/corals/par-field.ts';
import { fittingOf } from '../../core/corals/say.ts';
import { fixed } from '../../core/quantity/format.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { sceneOf } from '../coral/scene-of.ts';
import { guessedCautions, spotShort } from '../coral/spot-said.ts';
import type { Keep, Tank } from '../keep.ts';
import { MOST_LIGHT_POINTS } from '../placed.ts';
import { say } from '../../core/wording/say.ts';

/** So many letters of names stand in a line. */
const NAMES_LETTERS = 70;

/** Every light reading of a tank, the newest first, and the corals none of them reaches. */
export function pointsAnswer(
  keep: Keep,
  tank: Tank,
  again: { readonly tank?: string },
  nowMs: number,
): Answer {
  const points = keep.lightPoints(tank.id).toReversed();
  const enter = action(say('light.enterReading'), 'light measured', again, ['at', 'par']);
  if (points.length === 0) {
    return answer({
      headline: `${tank.name} has no light readings yet.`,
      steps: ['Enter one: /light measured at:left, back, low par:120'],
      next: [enter],
    });
  }
  const scene = sceneOf(keep, tank, nowMs);
  const dark = scene.corals.filter((coral) => judgeLight(scene, coral).here === undefined);
  return answer({
    headline: `${tank.name} has ${points.length === 1 ? 'one light reading' : `${points.length} light readings`}.`,
    read: [
      `at most ${MOST_LIGHT_POINTS} a tank, the newest stay; where says cm from the left, front and bottom`,
    ],
    table: {
      head: ['no.', 'PAR', 'where', '', 'day'],
      rows: points.map(({ id, ppfd, spot, atMs }) => [
        String(id),
        fixed(ppfd, 0),
        spotShort(spot),
        roughWords(spot, scene.box),
        new Date(atMs).toISOString().slice(0, 10),
      ]),
    },
    facts:
      dark.length === 0
        ? []
        : [
            {
              label: `corals with no reading within ${READING_RADIUS_CM} cm`,
              value: fittingOf(
                dark.map(({ label }) => label),
                NAMES_LETTERS,
              ),
            },
          ],
    steps: ['Take one out with /light measured remove: and its number.'],
    cautions: guessedCautions(scene),
    next: [enter, action(say('ask.checkMyCorals'), 'coral check', again)],
  });
}
