import { compoundsFor } from '../../../core/dosing/compound.ts';
import type { Slots } from '../../../core/language/slots.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { parameter, type ParameterId } from '../../../core/water/parameter.ts';
import { answer, type Answer } from '../../answer.ts';
import { action } from '../../calls.ts';
import { HOLDS_ONLY } from '../../dose/daily.ts';
import { solutionCommand } from '../../dose/solution.ts';
import { effectCommand } from '../../dose/effect.ts';
import { attempt } from './attempt.ts';
import { stockSaid } from './stock-said.ts';

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

/** The daily millilitres of a solution of a known strength as each of the salts it may be. */
export function eachStock(
  slots: Slots,
  { of, goal, tank }: { readonly of: ParameterId; readonly goal: string; readonly tank: string | undefined },
): Answer | undefined {
  if (slots.salt !== undefined || slots.strength === undefined) return undefined;
  const done = compoundsFor(of).flatMap(({ name, hazard, water }) => {
    if (hazard === 'lime' || water > 2) return [];
    const stock = stockSaid({ ...slots, salt: name });
    if (stock === undefined) return [];
    const given = attempt(() =>
      solutionCommand.run({ ...stock, of, goal, tank: tank ?? '100 L' }, { nowMs: 0 }),
    );
    return given === undefined ? [] : [{ name, given }];
  });
  const [first] = done;
  if (first === undefined) return undefined;
  const words = done.map(({ given: { headline } }) =>
    headline.replace(/\. .*$/, '.').replace('that solution', 'it'),
  );
  return answer({
    headline: `Each day, by which powder it is: ${done.map(({ name }, at) => `${name}: ${words[at] ?? ''}`).join(' ')}`,
    read: [
      `a solution of ${slots.strength}; its powder was not said`,
      ...(tank === undefined ? ['per 100 L'] : []),
    ],
    steps: [HOLDS_ONLY, ...first.given.steps],
    cautions: first.given.cautions,
    sources: first.given.sources,
  });
}
