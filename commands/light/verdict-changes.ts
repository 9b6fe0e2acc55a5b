import { judgeLight, lightWords } from '../../core/corals/rules/light.ts';
import type { Scene } from '../../core/corals/scene.ts';
import type { Fact } from '../answer.ts';

/** Corals whose light is judged otherwise after a reading than before, the worse first. */
export function changedFacts(before: Scene, after: Scene): readonly Fact[] {
  const order = ['move', 'watch', 'settled'];
  return after.corals
    .flatMap((coral) => {
      const [was, is] = [judgeLight(before, coral), judgeLight(after, coral)];
      return was.word === is.word && was.verdict === is.verdict ? [] : [{ coral, was, is }];
    })
    .sort((a, b) => order.indexOf(a.is.verdict) - order.indexOf(b.is.verdict))
    .map(({ coral, was, is }) => ({
      label: `${coral.label} (${coral.id})`,
      value: `${lightWords(is, coral)} Before: ${was.word}.`,
      verdict: is.verdict,
    }));
}
