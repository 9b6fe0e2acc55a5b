import type { Answer } from '../../commands/answer.ts';
import { shortLimits } from '../../commands/short/limits.ts';

/** Letters of all dangers of a card together: two lines of a phone hold no more. Own choice. */
const DANGERS = 330;

/** The texts of an answer that its short form has no room for. */
export function beyondShort({ headline, tone, steps, dangers }: Answer): readonly string[] {
  const all = dangers.join(' ');
  return [
    ...longer([headline], shortLimits.headline),
    ...longer(
      steps.slice(0, tone === 'urgent' ? shortLimits.urgentSteps : shortLimits.steps),
      shortLimits.step,
    ),
    ...longer(dangers, shortLimits.danger),
    ...longer([all], DANGERS),
  ];
}

function longer(texts: readonly string[], most: number): readonly string[] {
  return texts.filter((text) => text.length > most);
}
