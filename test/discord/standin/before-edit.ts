import { list, record, text, whole } from './json.ts';
import type { StoredMessage } from './message.ts';

/** What a check needs to know of a message that is to be edited. */
export function beforeEdit(stored: StoredMessage): { flags: number; fileNames: Map<string, string> } {
  const kept = list(stored.wire['attachments']).map(record);
  return {
    flags: whole(stored.wire['flags']),
    fileNames: new Map(kept.map((each) => [text(each['id']), text(each['filename'])])),
  };
}
