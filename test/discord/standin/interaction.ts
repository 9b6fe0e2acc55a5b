import type { Json } from './json.ts';
import type { FilePart } from './multipart.ts';
import type { Sent, StoredMessage } from './message.ts';

/** One try of the bot to answer an interaction, whatever came of it. */
export interface Callback {
  /** The callback type: 4 message, 5 deferred, 6 deferred update, 7 update, 8 choices, 9 form. */
  readonly type: number;
  readonly body: Json;
  readonly files: readonly FilePart[];
  /** Since delivery. */
  readonly elapsedMs: number;
  readonly status: number;
  /** Discord's error code, 0 when it was taken. */
  readonly code: number;
}

/** An interaction that was delivered, and everything the bot did with it. */
export interface Interaction {
  readonly id: string;
  readonly token: string;
  /** 2 command, 3 component, 4 autocomplete, 5 form. */
  readonly type: number;
  readonly payload: Json;
  readonly deliveredMs: number;
  /** Delivered when its time was already over. */
  readonly late: boolean;
  /** The message whose button or menu was used. */
  readonly source: StoredMessage | undefined;
  readonly callbacks: Callback[];
  accepted: Callback | undefined;
  original: StoredMessage | undefined;
  reply: Sent | undefined;
  readonly edits: Sent[];
  readonly followUps: Sent[];
}
