import { expect, it } from 'vitest';
import { sceneOf } from '../../../commands/coral/scene-of.ts';
import { NOW_MS, twoPersons } from './person.ts';

it('is everything a placement is judged by', () => {
  const [{ keep, say }] = twoPersons();
  say('/tank edit flow:back to front');
  say('/coral add coral:torch at:20 x 30 x 20 cm size:10 cm since:2026-04-05 label:Gold');
  keep.addLightPoints(1, [{ spot: { xCm: 1, yCm: 2, zCm: 3 }, ppfd: 90, atMs: NOW_MS }]);
  const tank = keep.tanks()[0] ?? expect.unreachable();
  const scene = sceneOf(keep, tank, NOW_MS);
  expect(scene).toMatchObject({
    box: { lengthCm: 120, widthCm: 50, heightCm: 46 },
    boxGuessed: false,
    flow: 'back to front',
    light: [{ id: 1, xCm: 1, yCm: 2, zCm: 3, ppfd: 90, atMs: NOW_MS }],
    corals: [{ id: 1, label: 'Gold', rough: false, diameterCm: 10, origin: 'unknown', daysHere: 30 }],
  });
  expect(scene.corals[0]?.entry.id).toBe('torch-coral');
});

it('guesses the glass from the volume where it is not known', () => {
  const [{ keep, say }] = twoPersons();
  say('/tank new name:Nano volume:250 L');
  const nano = keep.tanks()[1] ?? expect.unreachable();
  expect(sceneOf(keep, nano, NOW_MS)).toMatchObject({
    box: { lengthCm: 100, widthCm: 50, heightCm: 50 },
    boxGuessed: true,
    corals: [],
  });
});
