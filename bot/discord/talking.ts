import { takesAnew } from '../../commands/ask/offer.ts';
import type { GoesOn, PlacedTalk, Talks } from '../talks.ts';
import type { Call } from './asked/call.ts';
import type { Pressed } from './asked/pressed.ts';
import type { PlaceHere } from './asked/place.ts';

/** Where something is asked, and what of it others may read. */
interface Where {
  readonly personId: string;
  readonly place: PlaceHere | undefined;
  /** Only the asker sees the answer: what is told there is kept apart from what is said before others. */
  readonly isOwn: boolean;
}

/** The talk of a message, which goes on from the one it replies to. */
export function talkOfMessage(
  talks: Pick<Talks, 'talkOf'>,
  where: Where,
  repliedTo: string | undefined,
): PlacedTalk {
  const goesOn = goesOnIn(where);
  const places = [...(repliedTo === undefined ? [] : [repliedTo]), goesOn.at];
  return talks.talkOf(where.personId, places, goesOn);
}

/**
 * The talk of a call. A button goes on from the answer it stands under; one that takes the message of that answer anew
 * knows no other.
 */
export function talkOfCall(
  talks: Pick<Talks, 'talkOf'>,
  where: Where,
  call: Pick<Call, 'command' | 'input'>,
  pressed: Pressed | undefined,
): PlacedTalk {
  const goesOn = goesOnIn(where);
  const under = pressed?.askedId === undefined ? [] : [pressed.askedId];
  const isAnew = pressed !== undefined && takesAnew(call);
  return talks.talkOf(where.personId, isAnew ? under : [...under, goesOn.at], goesOn);
}

/** Threads and posts are about one thing: a talk lasts there. */
function goesOnIn({ place, isOwn }: Where): GoesOn & { readonly at: string } {
  if (place === undefined) return { at: 'own messages' };
  return { at: `${isOwn ? 'own' : 'said in'} ${place.channelId}`, lasts: place.isThread() };
}
