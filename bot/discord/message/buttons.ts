import { ButtonStyle, ComponentType } from 'discord.js';
import type { APIActionRowComponent, APIButtonComponentWithCustomId } from 'discord.js';
import type { NextAction } from '../../../commands/answer.ts';
import { callId, wholeId } from '../asked/call.ts';
import type { HoldCall } from '../asked/call.ts';
import { shortened } from './shortened.ts';

export type Button = APIButtonComponentWithCustomId;

const longestLabel = 80;
const inRow = 5;

/** A button for each action, at most `most`; the same action stands once. */
export function buttonsOf(actions: readonly NextAction[], most: number, hold: HoldCall): readonly Button[] {
  const ids = actions.map(wholeId);
  const once = actions.filter((_, at) => ids.indexOf(ids[at] ?? '') === at);
  return once.slice(0, most).flatMap((action) => {
    const id = callId(action, hold);
    return id === undefined ? [] : [button(id, action.label)];
  });
}

export function button(id: string, label: string): Button {
  return {
    type: ComponentType.Button,
    style: ButtonStyle.Secondary,
    custom_id: id,
    label: shortened(label, longestLabel),
  };
}

export function rowsOf(buttons: readonly Button[]): readonly APIActionRowComponent<Button>[] {
  const rows: APIActionRowComponent<Button>[] = [];
  for (let at = 0; at < buttons.length; at += inRow) {
    rows.push({ type: ComponentType.ActionRow, components: buttons.slice(at, at + inRow) });
  }
  return rows;
}
