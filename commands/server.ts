import type { ChosenUnits } from '../core/quantity/chosen-units.ts';

/** What a server's managers set; everything has a quiet default. */
export interface DeskSettings {
  /** Units a bare number is read in where the member has no tank that says so. */
  readonly units: ChosenUnits;
  /** Where reminders go, set for a channel without naming one. */
  readonly reminderChannelId?: string | undefined;
  /** Where answers are public; everywhere when empty. Elsewhere only the asker sees them. */
  readonly publicChannelIds: readonly string[];
  readonly helperRoleId?: string | undefined;
}

export const quietSettings: DeskSettings = { units: {}, publicChannelIds: [] };

/** The server a command was given in, bound to the asker; absent in direct messages and in the terminal room. */
export interface Server {
  readonly id: string;
  /** The channel, forum post or thread it was given in. */
  readonly channelId: string;
  readonly settings: () => DeskSettings;
  /** Whether the asker has the permission Manage Server. */
  readonly mayManage: boolean;
  /** @throws Problem when the asker may not manage the server. */
  readonly change: (settings: DeskSettings) => void;
  /** Whether the asker may write in a channel of this server. */
  readonly mayWrite: (channelId: string) => boolean;
  /** Names of Discord's permissions the bot needs and lacks in a channel: "View Channel", "Send Messages". */
  readonly lacks: (channelId: string) => readonly string[];
}
