import { judgeLight, lightWords } from '../../core/corals/rules/light.ts';
import type { Scene } from '../../core/corals/scene.ts';
import type { Answer } from '../answer.ts';

/** Corals whose light is judged otherwise after a reading than before, the worse first, and by what. */
export function changedLight(before: Scene, after: Scene): Pick<Answer, 'facts' | 'working'> {
  const order = ['move', 'watch', 'settled'];
  const changed = after.corals
    .flatMap((coral) => {
      const [was, is] = [judgeLight(before, coral), judgeLight(after, coral)];
      return was.word === is.word && was.verdict === is.verdict ? [] : [{ coral, was, is }];
    })
    .sort((a, b) => order.indexOf(a.is.verdict) - order.indexOf(b.is.verdict))
    .map(({ coral, was, is }) => ({ label: `${coral.label} (${coral.id})`, coral, was, is }));
  return {
    facts: changed.map(({ label, was, is }) => ({
      label,
      value: `${is.word}. Before: ${was.word}`,
      verdict: is.verdict,
    })),
    working: changed.map(({ label, is, coral }) => `${label}: ${lightWords(is, coral)}`),
  };
}
