/**
 * Discord's documented limits, as data. Each range is inclusive; a count of characters is a count of UTF-16
 * units, which is never smaller than Discord's own count, so the check errs on the strict side.
 *
 * Source: the developer documentation of Discord (pages Application Commands, Receiving and Responding to
 * Interactions, Component Reference, Message Resource, Gateway, Rate Limits). Written from memory and compared
 * with the notes in the discord-api-types 0.38 declarations where these give a number.
 */
export interface Range {
  readonly min: number;
  readonly max: number;
}

export const ranges = {
  'command.name': { min: 1, max: 32 },
  'command.description': { min: 1, max: 100 },
  'command.options': { min: 0, max: 25 },
  // The documentation has named 4000 and, later, 8000: the smaller is safe under both.
  'command.text': { min: 0, max: 4000 },
  'command.count': { min: 0, max: 100 },
  // Context menu commands of one kind (user or message). Later documentation names 15: the smaller is safe.
  'command.menus': { min: 0, max: 5 },
  'choice.count': { min: 0, max: 25 },
  'choice.name': { min: 1, max: 100 },
  'choice.value': { min: 1, max: 100 },
  'option.minLength': { min: 0, max: 6000 },
  'option.maxLength': { min: 1, max: 6000 },
  'autocomplete.choices': { min: 0, max: 25 },
  'message.content': { min: 0, max: 2000 },
  'message.embeds': { min: 0, max: 10 },
  'message.files': { min: 0, max: 10 },
  'message.nonce': { min: 0, max: 25 },
  'message.rows': { min: 0, max: 5 },
  'message.stickers': { min: 0, max: 3 },
  'history.limit': { min: 1, max: 100 },
  'mentions.ids': { min: 0, max: 100 },
  'file.description': { min: 0, max: 1024 },
  'file.bytes': { min: 0, max: 10 * 1024 * 1024 },
  'embed.title': { min: 0, max: 256 },
  'embed.description': { min: 0, max: 4096 },
  'embed.fields': { min: 0, max: 25 },
  'embed.fieldName': { min: 1, max: 256 },
  'embed.fieldValue': { min: 1, max: 1024 },
  'embed.footer': { min: 0, max: 2048 },
  'embed.author': { min: 0, max: 256 },
  'embed.total': { min: 0, max: 6000 },
  'component.total': { min: 0, max: 40 },
  'component.text': { min: 0, max: 4000 },
  'component.customId': { min: 1, max: 100 },
  'text.content': { min: 1, max: 4000 },
  'row.buttons': { min: 1, max: 5 },
  'button.label': { min: 1, max: 80 },
  'button.url': { min: 1, max: 512 },
  'select.options': { min: 1, max: 25 },
  'select.placeholder': { min: 0, max: 150 },
  'select.minValues': { min: 0, max: 25 },
  'select.maxValues': { min: 1, max: 25 },
  'selectOption.label': { min: 1, max: 100 },
  'selectOption.value': { min: 1, max: 100 },
  'selectOption.description': { min: 0, max: 100 },
  'gallery.items': { min: 1, max: 10 },
  'media.description': { min: 0, max: 1024 },
  'section.texts': { min: 1, max: 3 },
  'container.accent': { min: 0, max: 0xffffff },
  'modal.title': { min: 1, max: 45 },
  'modal.components': { min: 1, max: 5 },
  'label.text': { min: 1, max: 45 },
  'label.description': { min: 0, max: 100 },
  'input.label': { min: 1, max: 45 },
  'input.placeholder': { min: 0, max: 100 },
  'input.minLength': { min: 0, max: 4000 },
  'input.maxLength': { min: 1, max: 4000 },
  'input.value': { min: 0, max: 4000 },
} as const satisfies Record<string, Range>;

export type RangeName = keyof typeof ranges;

/** Rules that are not a range. */
export const shapeRules = [
  'type',
  'snowflake',
  'command.pattern',
  'command.shape',
  'command.requiredFirst',
  'command.duplicate',
  'choice.type',
  'message.empty',
  'message.flags',
  'message.legacyWithV2',
  'message.attachment',
  'message.reference',
  'mentions.shape',
  'component.place',
  'component.shape',
  'component.customIdTwice',
  'callback.type',
] as const;

export type Rule = RangeName | (typeof shapeRules)[number];

/** Names of chat commands and their options; the name must also equal its own lower case. */
export const commandNamePattern = /^[-_\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]{1,32}$/u;

export const snowflakePattern = /^\d{17,20}$/;

export const flag = {
  suppressEmbeds: 1 << 2,
  ephemeral: 1 << 6,
  loading: 1 << 7,
  suppressNotifications: 1 << 12,
  componentsV2: 1 << 15,
} as const;

/** Message flags a bot may set, for each way of sending. */
export const settableFlags = {
  create: flag.suppressEmbeds | flag.suppressNotifications | flag.componentsV2,
  reply: flag.suppressEmbeds | flag.ephemeral | flag.suppressNotifications | flag.componentsV2,
  defer: flag.ephemeral,
  edit: flag.suppressEmbeds | flag.componentsV2,
} as const;

export type Way = keyof typeof settableFlags;

/** Privileged gateway intents: members, presences, message content. */
export const privilegedIntents = (1 << 1) | (1 << 8) | (1 << 15);
/** Every intent bit that exists. */
export const knownIntents = 0b1_1111_1111_1111_1111 | (1 << 20) | (1 << 21) | (1 << 24) | (1 << 25);

export const time = {
  firstResponseMs: 3000,
  interactionTokenMs: 15 * 60 * 1000,
  nonceMs: 5 * 60 * 1000,
  globalWindowMs: 1000,
} as const;

export const globalRequestsPerWindow = 50;
export const gatewayPayloadBytes = 4096;
