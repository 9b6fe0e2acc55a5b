import { checkComponents } from './check-components.ts';
import { checkEmbeds } from './check-embeds.ts';
import { mediaUrls } from './component.ts';
import { absent, isRecord, type Json, list, record, text, whole } from './json.ts';
import { flag, settableFlags, type Way } from './limits.ts';
import type { FilePart } from './multipart.ts';
import { checkSnowflake, listWithin, type Spot, textWithin, within } from './spot.ts';

/** What a message payload is checked against: how it is sent, with which files, on top of what. */
export interface Sending {
  readonly way: Way;
  readonly files: readonly FilePart[];
  /** The message an edit changes. */
  readonly before?: { readonly flags: number; readonly fileNames: ReadonlyMap<string, string> };
}

/** Checks a message to be created or edited. */
export function checkMessage(here: Spot, body: unknown, sending: Sending): void {
  if (!isRecord(body)) return here.fail('type', 'Must be an object');
  const flags = whole(body['flags']) | (sending.before?.flags ?? 0);
  const v2 = (flags & flag.componentsV2) !== 0;
  checkFlags(here, body, sending);
  if (v2) checkNoLegacy(here, body);
  textWithin(here.at('content'), body['content'], 'message.content');
  checkEmbeds(here, body);
  checkComponents(here, body, v2);
  listWithin(here, body, 'sticker_ids', 'message.stickers').forEach((id, index) =>
    checkSnowflake(here.at('sticker_ids', index), id),
  );
  checkFiles(here, body, sending);
  checkNonce(here, body['nonce']);
  if (!absent(body['allowed_mentions'])) checkMentions(here.at('allowed_mentions'), body['allowed_mentions']);
  checkReference(here, body['message_reference']);
  const replacesNothing = ((sending.before?.flags ?? 0) & flag.loading) !== 0;
  if (sending.way === 'create' || sending.way === 'reply' || replacesNothing) {
    checkNotEmpty(here, body, sending);
  }
}

function checkFlags(here: Spot, body: Json, sending: Sending): void {
  if (!absent(body['flags']) && !Number.isInteger(body['flags'])) here.fail('type', 'Flags are a number');
  const allowed = settableFlags[sending.way] | (sending.before?.flags ?? 0);
  const others = whole(body['flags']) & ~allowed;
  if (others !== 0) here.at('flags').fail('message.flags', `Flags ${others} cannot be set here`);
}

function checkNoLegacy(here: Spot, body: Json): void {
  for (const key of ['content', 'embeds', 'sticker_ids', 'poll']) {
    const value = body[key];
    const empty = absent(value) || value === '' || (Array.isArray(value) && value.length === 0);
    if (!empty) here.at(key).fail('message.legacyWithV2', 'Cannot be used with IS_COMPONENTS_V2');
  }
}

function checkFiles(here: Spot, body: Json, { files, before }: Sending): void {
  const named = listWithin(here, body, 'attachments', 'message.files').map(record);
  named.forEach((each, index) => {
    textWithin(here.at('attachments', index, 'description'), each['description'], 'file.description');
    const id = String(each['id']);
    if (!files.some((file) => file.field === `files[${id}]`) && !before?.fileNames.has(id)) {
      here.at('attachments', index).fail('message.attachment', `No file came with id ${id}`);
    }
  });
  within(here.at('files'), files.length, 'message.files');
  files.forEach((file, index) => within(here.at('files', index), file.data.length, 'file.bytes'));
  const kept = [...(before?.fileNames ?? [])]
    .filter(([id]) => absent(body['attachments']) || named.some((each) => each['id'] === id))
    .map(([, name]) => name);
  const present = new Set([...kept, ...files.map((file) => file.name)]);
  for (const url of mediaUrls(body)) {
    const name = url.startsWith('attachment://') ? url.slice('attachment://'.length) : undefined;
    if (name !== undefined && !present.has(name)) {
      here.fail('message.attachment', `The referenced attachment '${name}' was not found`);
    }
  }
}

function checkNonce(here: Spot, nonce: unknown): void {
  if (absent(nonce) || Number.isInteger(nonce)) return;
  textWithin(here.at('nonce'), nonce, 'message.nonce');
}

const parseKinds: ReadonlySet<unknown> = new Set(['roles', 'users', 'everyone']);
const mentionKeys = new Set(['parse', 'roles', 'users', 'replied_user']);

function checkMentions(here: Spot, value: unknown): void {
  if (!isRecord(value)) return here.fail('mentions.shape', 'Must be an object');
  const strange = Object.keys(value).filter((key) => !mentionKeys.has(key));
  if (strange.length > 0) here.fail('mentions.shape', `Unknown keys ${strange.join(', ')}`);
  const parse = list(value['parse']);
  if (!absent(value['parse']) && !Array.isArray(value['parse']))
    here.fail('mentions.shape', 'parse is a list');
  if (parse.some((each) => !parseKinds.has(each)) || new Set(parse).size < parse.length) {
    here.at('parse').fail('mentions.shape', 'Each of roles, users, everyone at most once');
  }
  if (!absent(value['replied_user']) && typeof value['replied_user'] !== 'boolean') {
    here.at('replied_user').fail('mentions.shape', 'Must be true or false');
  }
  for (const key of ['roles', 'users']) {
    const ids = listWithin(here, value, key, 'mentions.ids');
    ids.forEach((id, index) => checkSnowflake(here.at(key, index), id));
    if (ids.length > 0 && parse.includes(key)) {
      here.at(key).fail('mentions.shape', 'A list of ids and parse exclude each other');
    }
  }
}

function checkReference(here: Spot, reference: unknown): void {
  if (absent(reference)) return;
  for (const key of ['message_id', 'channel_id', 'guild_id']) {
    const id = record(reference)[key];
    if (!absent(id)) checkSnowflake(here.at('message_reference', key), id);
  }
}

function checkNotEmpty(here: Spot, body: Json, { files }: Sending): void {
  const lists = ['embeds', 'components', 'sticker_ids'].flatMap((key) => list(body[key]));
  const forwards = record(body['message_reference'])['type'] === 1;
  const poll = !absent(body['poll']);
  if (text(body['content']).trim() === '' && lists.length + files.length === 0 && !forwards && !poll) {
    here.fail('message.empty', 'Cannot send an empty message');
  }
}
