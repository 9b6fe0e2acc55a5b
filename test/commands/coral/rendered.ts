import { render } from '../../../bot/discord/message/render.ts';
import type { Answer } from '../../../commands/answer.ts';
import { checkMessage } from '../../discord/standin/check-message.ts';
import { displayedText } from '../../discord/standin/component.ts';
import { spot, type Issue } from '../../discord/standin/spot.ts';

/** An answer as Discord gets it: what the stand-in objects to, and all of its text. */
export function rendered(answer: Answer): { readonly issues: readonly Issue[]; readonly text: string } {
  const issues: Issue[] = [];
  const { body } = render(answer);
  checkMessage(spot(issues), { ...body }, { way: 'reply', files: [] });
  return { issues, text: displayedText(body.components).join('\n') };
}

/** What the renderer says of lines it had no room for. */
export const CUT = /^-# and \d+ more$/m;
