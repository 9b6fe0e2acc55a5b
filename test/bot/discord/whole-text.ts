import { everyComponent } from '../../discord/standin/component.ts';
import type { Pressing } from '../../discord/standin/interaction-drivers.ts';
import type { Sent } from '../../discord/standin/message.ts';
import type { Club } from './club.ts';

/** The custom id of the button that shows the long form, where there is one. */
export function whyOf(sent: Sent): string | undefined {
  const ids = everyComponent(sent.components).map((each) => String(each['custom_id']));
  return ids.find((id) => id.startsWith('why:'));
}

/** All an answer says: what is shown, and what "Working and sources" shows, which only the presser may see. */
export async function wholeText(
  { standIn }: Pick<Club, 'standIn'>,
  sent: Sent,
  how: Pressing = {},
): Promise<string> {
  if (whyOf(sent) === undefined) return sent.text;
  return `${sent.text}\n${(await longReply({ standIn }, sent, how)).text}`;
}

/** What "Working and sources" shows: to its presser alone. */
export async function longReply(
  { standIn }: Pick<Club, 'standIn'>,
  sent: Sent,
  how: Pressing = {},
): Promise<Sent> {
  const why = whyOf(sent);
  if (why === undefined) throw new Error('there is no long form');
  const shown = await standIn.component(why, { messageId: String(sent.message['id']), ...how }).reply;
  if (!shown.ephemeral) throw new Error('the long form is shown to everybody');
  return shown;
}
