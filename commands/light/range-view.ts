import { spotErrorCm } from '../../core/corals/distance.ts';
import { lightAround, READING_RADIUS_CM, type LightHere } from '../../core/corals/par-field.ts';
import { hereWords } from '../../core/corals/rules/light.ts';
import type { Scene } from '../../core/corals/scene.ts';
import { readSpot, type ReadSpot } from '../../core/corals/spot.ts';
import { par } from '../../core/light/band.ts';
import { Problem } from '../../core/problem.ts';
import type { Answer, Fact } from '../answer.ts';
import type { OwnContext } from '../command.ts';
import { sceneOf } from '../coral/scene-of.ts';
import { guessedCautions, spotSaid } from '../coral/spot-said.ts';
import { keepOf } from '../tank/asked-tank.ts';
import { say } from '../../core/wording/say.ts';

/** What a part of the answer brings along; the rest is said of every coral. */
export type RangePart = Pick<Answer, 'headline' | 'read' | 'facts' | 'steps' | 'working' | 'cautions'> &
  Partial<Pick<Answer, 'table'>>;

/** Where a coral is thought of, and the light that is known there. */
export interface View extends ReadSpot {
  readonly scene: Pick<Scene, 'light' | 'box'>;
  readonly here: LightHere | undefined;
  readonly read: readonly string[];
  readonly cautions: readonly string[];
}

/** A spot of the tank in use, with what its light readings say of it. */
export function tankView(at: string, context: OwnContext): View {
  const keep = keepOf(context);
  const tank = keep.tankInUse();
  if (tank === undefined) {
    throw new Problem(say('coral.noTankForSpot'), {
      field: 'at',
      given: at,
      hint: say('light.putOneUseWith'),
    });
  }
  const scene = sceneOf(keep, tank, context.nowMs);
  const found = readSpot(at, scene.box, 'at');
  const here = lightAround(scene.light, found.spot, spotErrorCm(found, scene.box));
  return {
    ...found,
    scene,
    here,
    read: [`in ${tank.name}: ${spotSaid(found, scene.box)}`],
    cautions: guessedCautions(scene),
  };
}

/** A spot that was measured, wherever it is. */
export function readingView(ppfd: number): View {
  const spot = { xCm: 0, yCm: 0, zCm: 0 };
  return {
    spot,
    rough: false,
    scene: { light: [{ ...spot, id: 1, ppfd, atMs: 0 }], box: { lengthCm: 1, widthCm: 1, heightCm: 1 } },
    here: { lowPpfd: ppfd, ppfd, highPpfd: ppfd, nearestCm: 0 },
    read: [`${par(ppfd)} measured at its spot`],
    cautions: [],
  };
}

/** The light of a spot in words: measured there, in between readings, or not known. */
export function hereFact({ here }: View): Fact {
  return {
    label: 'light at the spot',
    value:
      here === undefined
        ? `no reading near here: none within ${READING_RADIUS_CM} cm (project rule), so it is not known`
        : `${hereWords(here)} (project rule)`,
  };
}
