import { compoundsFor } from '../../../core/dosing/compound.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { parameter } from '../../../core/water/parameter.ts';
import type { Answer } from '../../answer.ts';
import { action } from '../../calls.ts';
import { effectCommand } from '../../dose/effect.ts';
import { attempt } from './attempt.ts';
import { byPowder } from './by-powder.ts';

/** What a weighed amount does as each of the salts it may be, where only what it raises was said. */
export function eachSalt({ slots: { of, salt, amount, volume } }: Frame): Answer | undefined {
  if (salt !== undefined || of === undefined || amount === undefined) return undefined;
  const salts = compoundsFor(of).filter(({ hazard }) => hazard !== 'lime');
  const done = salts.flatMap(({ name }) => {
    const given = attempt(() => effectCommand.run({ with: name, amount, volume, of }, { nowMs: 0 }));
    return given === undefined ? [] : [{ name, given }];
  });
  const [first, ...more] = done;
  if (first === undefined) return undefined;
  const whole = byPowder([first, ...more]);
  return {
    ...whole,
    facts: whole.facts.slice(0, done.length),
    read: [`${parameter(of).label}: which salt it is was not said`],
    working: [],
    next: done.map(({ name }) => action(name, 'dose effect', { with: name, amount, volume, of })),
  };
}
