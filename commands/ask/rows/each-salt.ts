import { compoundsFor } from '../../../core/dosing/compound.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { parameter } from '../../../core/water/parameter.ts';
import { answer, type Answer } from '../../answer.ts';
import { action } from '../../calls.ts';
import { effectCommand } from '../../dose/effect.ts';
import { attempt } from './attempt.ts';

/** What a weighed amount does as each of the salts it may be, where only what it raises was said. */
export function eachSalt({ slots: { of, salt, amount, volume } }: Frame): Answer | undefined {
  if (salt !== undefined || of === undefined || amount === undefined) return undefined;
  const salts = compoundsFor(of).filter(({ hazard }) => hazard !== 'lime');
  const done = salts.flatMap(({ name }) => {
    const given = attempt(() => effectCommand.run({ with: name, amount, volume, of }, { nowMs: 0 }));
    return given === undefined ? [] : [{ name, given }];
  });
  const [first] = done;
  if (first === undefined) return undefined;
  return answer({
    headline: `It depends on the powder. ${done.map(({ given: { headline } }) => headline).join(' ')}`,
    read: [`${parameter(of).label}: which salt it is was not said`],
    steps: first.given.steps,
    cautions: first.given.cautions,
    sources: first.given.sources,
    next: done.map(({ name }) => action(name, 'dose effect', { with: name, amount, volume, of })),
  });
}
