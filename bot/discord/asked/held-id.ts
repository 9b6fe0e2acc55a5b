/** A button that shows what is held: the long form of an answer, or a page of it. */
export type Look =
  | { readonly kind: 'why'; readonly id: string }
  | { readonly kind: 'more'; readonly id: string; readonly page: number };

/** The custom id of a button whose call is held. */
export function heldId(id: string): string {
  return `held:${id}`;
}

/** The id under which the call of a button is held; undefined for a button that carries its call itself. */
export function readHeldId(customId: string): string | undefined {
  return /^held:([\w-]{1,40})$/.exec(customId)?.[1];
}

export function lookId(look: Look): string {
  return look.kind === 'why' ? `why:${look.id}` : `more:${look.id}:${look.page}`;
}

export function readLook(customId: string): Look | undefined {
  const [, why, more, page] =
    /^(?:why:([\w-]{1,40})|more:([\w-]{1,40}):([1-9]\d{0,3}))$/.exec(customId) ?? [];
  if (why !== undefined) return { kind: 'why', id: why };
  return more === undefined ? undefined : { kind: 'more', id: more, page: Number(page) };
}
