import { ComponentType } from 'discord.js';
import type { APIComponentInContainer, RawFile } from 'discord.js';
import type { Answer } from '../../../commands/answer.ts';
import { extensionOf, safeName } from '../../files.ts';
import type { Drawn } from './drawn.ts';
import { shortened } from './shortened.ts';

/** A file of a message and the component that shows it. */
export interface Attached {
  readonly file: RawFile;
  readonly component: APIComponentInContainer;
}

/** What Discord's JSON says of the file at an index. */
export interface AttachmentNote {
  readonly id: number;
  readonly filename: string;
  readonly description?: string;
}

export function noteOf(
  { file, description }: Pick<Attached, 'file'> & Partial<AttachedPicture>,
  id: number,
): AttachmentNote {
  return { id, filename: file.name, ...(description === undefined ? {} : { description }) };
}

const longestAlt = 1024;

/** A picture of a message. */
export interface AttachedPicture {
  readonly file: RawFile;
  /** Alt text. */
  readonly description: string;
}

/** The pictures of an answer that are drawn as PNG, with their alt texts. */
export function attachedPictures({ pictures = [], pngs = [] }: Drawn): readonly AttachedPicture[] {
  return pictures.flatMap(({ name, alt }, index) => {
    const png = pngs[index];
    if (png === undefined) return [];
    const file = { data: Buffer.from(png), name: safeName(name, 'png') };
    return [{ file, description: shortened(alt, longestAlt) }];
  });
}

/** One gallery of them; none where there is none. */
export function galleryOf(pictures: readonly AttachedPicture[]): readonly APIComponentInContainer[] {
  if (pictures.length === 0) return [];
  const items = pictures.map(({ file, description }) => ({
    media: { url: `attachment://${file.name}` },
    description,
  }));
  return [{ type: ComponentType.MediaGallery, items }];
}

/** The text file of an answer. */
export function attachedFile({ file }: Answer): Attached | undefined {
  if (file === undefined) return undefined;
  const name = safeName(file.name, extensionOf(file.name));
  return {
    file: { data: Buffer.from(file.text), name },
    component: { type: ComponentType.File, file: { url: `attachment://${name}` } },
  };
}
