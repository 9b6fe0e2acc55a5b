import { ComponentType } from 'discord.js';
import type { APIComponentInContainer, RawFile } from 'discord.js';
import type { Answer } from '../../../commands/answer.ts';
import { extensionOf, safeName } from '../../files.ts';
import { shortened } from './shortened.ts';

/** A file of a message and the component that shows it. */
export interface Attached {
  readonly file: RawFile;
  /** Alt text. */
  readonly description?: string;
  readonly component: APIComponentInContainer;
}

/** What Discord's JSON says of the file at an index. */
export interface AttachmentNote {
  readonly id: number;
  readonly filename: string;
  readonly description?: string;
}

export function noteOf({ file, description }: Attached, id: number): AttachmentNote {
  return { id, filename: file.name, ...(description === undefined ? {} : { description }) };
}

const longestAlt = 1024;

/** The picture of an answer, drawn as PNG, with its alt text. */
export function attachedPicture({ picture }: Answer, png: Uint8Array | undefined): Attached | undefined {
  if (picture === undefined || png === undefined) return undefined;
  const name = safeName(picture.name, 'png');
  const description = shortened(picture.alt, longestAlt);
  return {
    file: { data: Buffer.from(png), name },
    description,
    component: {
      type: ComponentType.MediaGallery,
      items: [{ media: { url: `attachment://${name}` }, description }],
    },
  };
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
