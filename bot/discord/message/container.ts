import { ComponentType, MessageFlags } from 'discord.js';
import type { APIComponentInContainer, APIContainerComponent, RawFile } from 'discord.js';
import { attachedFile, attachedPictures, galleryOf, noteOf } from './attached.ts';
import type { AttachmentNote } from './attached.ts';
import { rowsOf } from './buttons.ts';
import type { Button } from './buttons.ts';
import type { Drawn } from './drawn.ts';
import { accents } from './palette.ts';
import { share } from './share.ts';
import type { Section } from './share.ts';

/** A message in Discord's own JSON, and the files that go along. It mentions nobody. */
export interface Rendered {
  readonly body: {
    readonly components: readonly APIContainerComponent[];
    readonly flags: MessageFlags;
    readonly allowed_mentions: { readonly parse: readonly []; readonly replied_user: false };
    readonly attachments?: readonly AttachmentNote[];
  };
  readonly files: readonly RawFile[];
}

/** Sections of an answer and lines of buttons as one container, inside Discord's limits; the pictures under the headline. */
export function contained(
  answer: Drawn,
  sections: readonly Section[],
  buttons: readonly (readonly Button[])[],
): Rendered {
  const [headline = [], ...texts] = share(sections).map(({ isApart, text }) => [
    ...(isApart ? [separator] : []),
    { type: ComponentType.TextDisplay as const, content: text },
  ]);
  const pictures = attachedPictures(answer);
  const file = attachedFile(answer);
  const components: APIComponentInContainer[] = [
    ...headline,
    ...galleryOf(pictures),
    ...texts.flat(),
    ...(file === undefined ? [] : [file.component]),
    ...buttons.flatMap(rowsOf),
  ];
  const attached = [...pictures, ...(file === undefined ? [] : [file])];
  return {
    body: {
      components: [{ type: ComponentType.Container, accent_color: accents[answer.tone], components }],
      flags: MessageFlags.IsComponentsV2,
      allowed_mentions: { parse: [], replied_user: false },
      ...(attached.length === 0 ? {} : { attachments: attached.map(noteOf) }),
    },
    files: attached.map((each) => each.file),
  };
}

const separator = { type: ComponentType.Separator as const };
