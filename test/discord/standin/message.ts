import { displayedText } from './component.ts';
import { absent, type Json, list, record, text, whole } from './json.ts';
import { flag } from './limits.ts';
import type { FilePart } from './multipart.ts';
import type { State } from './state.ts';

/** A message as Discord keeps it; `wire` is its JSON and is replaced by an edit. */
export interface StoredMessage {
  readonly id: string;
  readonly channelId: string;
  wire: Json;
  deleted: boolean;
}

/** One message or edit the bot sent: what it sent, and the message after it. */
export interface Sent {
  readonly body: Json;
  readonly files: readonly FilePart[];
  readonly content: string;
  readonly components: readonly Json[];
  readonly embeds: readonly Json[];
  readonly allowedMentions: Json | undefined;
  /** Flags of the message afterwards. */
  readonly flags: number;
  readonly ephemeral: boolean;
  /** All text shown: content, embeds, text displays; one a line. */
  readonly text: string;
  /** People the message would ping. */
  readonly pings: readonly string[];
  readonly message: Json;
  readonly atMs: number;
}

export interface NewMessage {
  readonly channelId: string;
  readonly author: Json;
  readonly body: Json;
  readonly files: readonly FilePart[];
  readonly flags?: number;
  readonly extra?: Json;
}

export function storeMessage(state: State, made: NewMessage): StoredMessage {
  const { body, channelId } = made;
  const id = state.nextId();
  const fixed = { tts: false, mention_everyone: false, mention_roles: [], pinned: false, type: 0 };
  const wire: Json = {
    ...fixed,
    id,
    channel_id: channelId,
    author: made.author,
    content: text(body['content']),
    timestamp: new Date(state.nowMs()).toISOString(),
    edited_timestamp: null,
    mentions: pinged(state, body).map((userId) => state.world.users.get(userId)),
    embeds: list(body['embeds']),
    components: list(body['components']),
    attachments: newAttachments(state, body, made.files),
    flags: made.flags ?? whole(body['flags']),
    ...(absent(body['nonce']) ? {} : { nonce: body['nonce'] }),
    ...made.extra,
  };
  const stored = { id, channelId, wire, deleted: false };
  state.messages.set(id, stored);
  return stored;
}

/** Changes a stored message as a PATCH does: fields that are absent stay, files are added. */
export function changeMessage(
  state: State,
  stored: StoredMessage,
  body: Json,
  files: readonly FilePart[],
): void {
  const before = stored.wire;
  const wanted = body['attachments'];
  const kept = list(before['attachments'])
    .map(record)
    .filter((each) => wanted === undefined || list(wanted).some((want) => record(want)['id'] === each['id']));
  const changed = ['content', 'embeds', 'components'].filter((key) => key in body);
  stored.wire = {
    ...before,
    ...Object.fromEntries(changed.map((key) => [key, body[key] ?? (key === 'content' ? '' : [])])),
    attachments: [...kept, ...newAttachments(state, body, files)],
    flags: (whole(before['flags']) & ~flag.loading) | whole(body['flags']),
    edited_timestamp: new Date(state.nowMs()).toISOString(),
  };
}

function newAttachments(state: State, body: Json, files: readonly FilePart[]): readonly Json[] {
  const named = list(body['attachments']).map(record);
  return files.map((file) => {
    const about = named.find((each) => `files[${String(each['id'])}]` === file.field);
    return upload(state, file, text(about?.['description']));
  });
}

/** Keeps a file and gives its attachment object, with an address the stand-in serves. */
export function upload(state: State, file: FilePart, description = ''): Json {
  const id = state.nextId();
  const path = `/attachments/${id}/${encodeURIComponent(file.name)}`;
  state.uploads.set(path, file);
  const url = state.origin() + path;
  const about = {
    content_type: file.contentType,
    size: file.data.length,
    ...(description && { description }),
  };
  return { id, filename: file.name, url, proxy_url: url, ...about };
}

/** Puts together what a test sees of one thing the bot sent. */
export function sentOf(state: State, stored: StoredMessage, body: Json, files: readonly FilePart[]): Sent {
  const components = list(body['components']).map(record);
  const embeds = list(body['embeds']).map(record);
  const mentions = body['allowed_mentions'];
  const flags = whole(stored.wire['flags']);
  const embedded = embeds.flatMap((each) => [text(each['title']), text(each['description'])]);
  const lines = [text(body['content']), ...embedded, ...displayedText(components)];
  return {
    body,
    files,
    content: text(body['content']),
    components,
    embeds,
    allowedMentions: absent(mentions) ? undefined : record(mentions),
    flags,
    ephemeral: (flags & flag.ephemeral) !== 0,
    text: lines.filter((line) => line !== '').join('\n'),
    pings: pinged(state, body),
    message: stored.wire,
    atMs: state.nowMs(),
  };
}

/** Whom a payload pings: people named in its text or replied to, as far as allowed_mentions lets it. */
function pinged(state: State, body: Json): readonly string[] {
  const mentions = body['allowed_mentions'];
  const rules = record(mentions);
  const all = absent(mentions) || list(rules['parse']).includes('users');
  const words = [text(body['content']), ...displayedText(body['components'])].join(' ');
  const named = [...words.matchAll(/<@!?(\d+)>/g)].map((match) => match[1] ?? '');
  const allowed = named.filter((id) => all || list(rules['users']).includes(id));
  const replied = state.messages.get(text(record(body['message_reference'])['message_id']));
  const pingsReplied = absent(mentions) || rules['replied_user'] === true;
  const author = replied && pingsReplied ? [text(record(replied.wire['author'])['id'])] : [];
  return [...new Set([...allowed, ...author])].filter((id) => state.world.users.has(id));
}
