import type { Answer } from '../answer.ts';
import type { OwnContext } from '../command.ts';
import { answerOf } from '../defaults.ts';
import { opened } from '../short/remark-first.ts';
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
  const both = <K extends 'read' | 'working' | 'dangers' | 'cautions' | 'sources'>(key: K): Answer[K] =>
    [...new Set([...first[key], ...second[key]])] as unknown as Answer[K];
  const given = {
    ...first,
    read: both('read'),
    facts: [...first.facts, ...second.facts],
    steps: [
      'Test again: a kit that shows zero means below its limit, and algae take nutrients up before it can see them.',
      'Feed the fish a little more or more often, skim less, take out phosphate media; pull the red growth by hand.',
      ...new Set([...first.steps, ...second.steps]),
    ],
    working: both('working'),
    dangers: both('dangers'),
    cautions: both('cautions'),
    sources: both('sources'),
  };
  const parts = [
    { value: 'Feed before you dose.' },
    { label: 'If you dose nitrate', value: first.headline },
    { label: 'Phosphate', value: second.headline },
  ];
  return opened(parts, given);
}
