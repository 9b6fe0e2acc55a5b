import { basisName, basisWords } from './basis-words.ts';
import type { Bases } from './basis.ts';
import { distanceCm } from './distance.ts';
import { flowWords } from './rules/flow.ts';
import { judgeLight, lightWords } from './rules/light.ts';
import { cm, missingCm } from './say.ts';
import type { Finding, Placed, Scene } from './scene.ts';

const glassBasis: Bases = [{ kind: 'project rule', note: 'its width against the glass' }];

/** The nearest other coral and the gap to it, edge to edge; the lower id where two are as near. */
export function nearest(
  scene: Scene,
  coral: Placed,
): { readonly coral: Placed; readonly gapCm: number } | undefined {
  return scene.corals
    .filter(({ id }) => id !== coral.id)
    .map((other) => ({ coral: other, gapCm: distanceCm(coral, other) }))
    .sort((a, b) => a.gapCm - b.gapCm || a.coral.id - b.coral.id)[0];
}

/** A coral whose width does not fit between its spot and the glass. Not asked of a spot in words. */
export function roomFindings({ box, boxGuessed }: Scene, coral: Placed): readonly Finding[] {
  if (coral.rough || boxGuessed) return [];
  const { xCm, yCm } = coral.spot;
  const freeCm = Math.min(xCm, box.lengthCm - xCm, yCm, box.widthCm - yCm);
  const overCm = coral.diameterCm / 2 - freeCm;
  if (overCm <= 0) return [];
  return [
    {
      rule: 'room',
      verdict: 'watch',
      corals: [coral.id],
      reason: `${coral.label}: ${cm(coral.diameterCm)} wide, and its middle ${cm(Math.max(0, freeCm))} from the glass. It rubs on it and cannot be cleaned behind.`,
      basis: basisWords(glassBasis),
      cure: `${missingCm(overCm)} further from the glass.`,
      weight: 10,
    },
  ];
}

/** What is said of a coral without a problem: its light, its nearest neighbour, the flow it wants. */
export function settledFinding(scene: Scene, coral: Placed): Finding {
  const { entry } = coral;
  const near = nearest(scene, coral);
  const { keepClearCm, keepClearBasis } = entry.sting;
  const about = coral.rough || near?.coral.rough === true ? 'about ' : '';
  const room =
    near === undefined
      ? 'It has the tank to itself.'
      : `Nearest: ${near.coral.label}, ${about}${cm(near.gapCm)} off; with unlike kinds keep ${cm(keepClearCm)} clear (${basisName(keepClearBasis)}).`;
  return {
    rule: 'room',
    verdict: 'settled',
    corals: [coral.id],
    reason: `${lightWords(judgeLight(scene, coral), coral)} ${room} Flow: ${flowWords(entry)} (${basisName(entry.flow.basis)}).`,
    basis: basisWords(entry.light.basis, keepClearBasis, entry.flow.basis),
    weight: 0,
  };
}
