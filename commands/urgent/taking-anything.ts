import { say } from '../../core/wording/say.ts';
import type { Command, OptionsSchema } from '../command.ts';
import { notUsed } from './not-used.ts';

/**
 * A command of first aid, which is answered whatever was typed: it runs with the options its schema takes, the others are
 * named in the answer, and nothing is refused.
 */
export function takingAnything<P extends Command['path'], S extends OptionsSchema>(
  command: Command<P, S>,
): Command<P, S> {
  return { ...command, takesAnything: true, run: sifted(command) };
}

function sifted({ options, run }: Pick<Command, 'options' | 'run'>): Command['run'] {
  return (input, context) => {
    const taken: Record<string, unknown> = {};
    const left: string[] = [];
    for (const [name, value] of Object.entries(input)) {
      if (value === undefined) continue;
      if (options.safeParse({ [name]: value }).success) taken[name] = value;
      else
        left.push(
          notUsed(name, value, name in options.shape ? say('urgent.notTaken') : say('urgent.noSuchOption')),
        );
    }
    const given = run(taken, context);
    return left.length === 0 ? given : { ...given, unused: [...left, ...given.unused] };
  };
}
