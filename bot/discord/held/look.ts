import type { ButtonInteraction } from 'discord.js';
import type { Answer } from '../../../commands/answer.ts';
import { takesAnew } from '../../../commands/ask/offer.ts';
import { shortForm } from '../../../commands/short.ts';
import { tooFast } from '../../turns.ts';
import type { Look } from '../asked/held-id.ts';
import type { Rendered } from '../message/container.ts';
import { renderLong, renderPage } from '../message/render.ts';
import { failed } from '../outcome.ts';
import type { Desk } from '../outcome.ts';
import { reply, replyAlone } from '../send.ts';
import { heldAnswer } from './find.ts';
import { holderFor } from './holder.ts';

/** Shows what a held answer says besides, to the one who pressed alone. Nothing is run again. */
export async function answerLook(desk: Desk, interaction: ButtonInteraction, look: Look): Promise<void> {
  const { id: personId } = interaction.user;
  if (desk.turnOf(personId) !== 'now') return reply(desk, interaction, { answer: tooFast(), hidden: true });
  let rendered: Rendered;
  try {
    rendered = drawn(desk, look, personId);
  } catch (error) {
    return reply(desk, interaction, failed(desk, error));
  }
  return replyAlone(desk, interaction, rendered);
}

function drawn(desk: Desk, look: Look, personId: string): Rendered {
  const hold = holderFor(desk, { personId, isPrivate: true });
  const answer = elsewhere(heldAnswer(desk, look.id, personId));
  if (look.kind === 'why') return renderLong(answer, hold);
  return renderPage(answer, look.id, Math.min(look.page, shortForm(answer).pages), hold);
}

/** What takes the message of an answer anew stands under that answer alone. */
function elsewhere(answer: Answer): Answer {
  return { ...answer, next: answer.next.filter((one) => !takesAnew(one)) };
}
