import type { Answer } from '../answer.ts';
import type { OwnContext } from '../command.ts';
import { answerOf } from '../defaults.ts';
import { amountCommand } from './amount.ts';

/** Nitrate and phosphate both read zero: feed first; what +1 nitrate and +0.03 phosphate would take. Common practice, no source. */
export function zeroNutrients(volume: string | undefined, context: OwnContext): Answer {
  const nitrate = answerOf(
    amountCommand,
    { of: 'nitrate', now: '0 ppm', goal: '1 ppm', with: 'sodium nitrate', volume },
    context,
  );
  const phosphate = answerOf(
    amountCommand,
    { of: 'phosphate', now: '0 ppm', goal: '0.03 ppm', with: 'monosodium phosphate', volume },
    context,
  );
  return joined(nitrate, phosphate);
}

function joined(first: Answer, second: Answer): Answer {
  const both = <K extends 'read' | 'working' | 'cautions' | 'sources'>(key: K): Answer[K] =>
    [...new Set([...first[key], ...second[key]])] as unknown as Answer[K];
  return {
    ...first,
    headline: `Feed before you dose. If you dose: ${first.headline} ${second.headline}`,
    read: both('read'),
    facts: [...first.facts, ...second.facts],
    steps: [
      'Test again: zero on a hobby kit means below its limit, not none. Algae take nutrients up before a test can see them.',
      'Feed the fish a little more or more often, skim less, take out phosphate media; pull the red growth by hand.',
      ...new Set([...first.steps, ...second.steps]),
    ],
    working: both('working'),
    cautions: both('cautions'),
    sources: both('sources'),
  };
}
