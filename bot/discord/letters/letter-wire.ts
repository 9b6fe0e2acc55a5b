import { ComponentType } from 'discord.js';
import { inLocale } from '../../../core/wording/in-locale.ts';
import type { Letter } from '../../clock/post.ts';
import type { Wire } from '../callback.ts';
import { holderFor } from '../held/holder.ts';
import type { HeldDesk } from '../held/holder.ts';
import { render } from '../message/render.ts';

/** A letter in Discord's own JSON. In a channel it names and pings the one person it is for, and nobody else. */
export function letterWire(desk: HeldDesk, { answer, place, toPersonId, nonce, locale }: Letter): Wire {
  const whose = { personId: toPersonId, isPrivate: place.kind === 'direct' };
  const { body, files } = inLocale(locale, () => render(answer, holderFor(desk, whose)));
  const once = { nonce, enforce_nonce: true };
  if (place.kind === 'direct') return { body: { ...body, ...once }, files };
  const named = { type: ComponentType.TextDisplay, content: `<@${toPersonId}>` };
  const pinging = { parse: [], users: [toPersonId], replied_user: false };
  const components = [named, ...body.components];
  return { body: { ...body, ...once, components, allowed_mentions: pinging }, files };
}
