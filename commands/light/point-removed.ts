import { par } from '../../core/light/band.ts';
import { Problem } from '../../core/problem.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { sceneOf } from '../coral/scene-of.ts';
import { spotShort } from '../coral/spot-said.ts';
import { tankInput } from '../coral/tank-input.ts';
import type { Keep, Tank } from '../keep.ts';
import { changedLight } from './verdict-changes.ts';
import { say } from '../../core/wording/say.ts';

/** Takes a reading out; one button puts it back. @throws Problem when the tank has none of that number. */
export function removedAnswer(keep: Keep, tank: Tank, given: string, nowMs: number): Answer {
  const id = /^#?(\d{1,15})$/.exec(given.trim())?.[1];
  const point = keep.lightPoints(tank.id).find((one) => one.id === Number(id));
  const again = tankInput(keep, tank);
  if (point === undefined) {
    throw new Problem(say('light.hasNoLightReading', { name: tank.name }), {
      field: 'remove',
      given,
      hint: say('light.seeThemAllWith'),
    });
  }
  const before = sceneOf(keep, tank, nowMs);
  keep.removeLightPoint(tank.id, point.id);
  const changes = changedLight(before, sceneOf(keep, tank, nowMs));
  const { spot, ppfd } = point;
  return answer({
    headline: `Reading ${point.id}, ${par(ppfd)}, is taken out of ${tank.name}.`,
    read: [spotShort(spot)],
    ...changes,
    isList: true,
    next: [
      action(say('light.putBack'), 'light measured', { at: spotShort(spot), par: par(ppfd), ...again }),
      action(say('light.allReadings'), 'light measured', again),
    ],
  });
}
