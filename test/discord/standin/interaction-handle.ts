import type { Callback, Interaction } from './interaction.ts';
import { type Json, list, record } from './json.ts';
import type { Sent } from './message.ts';
import { callbackData } from './multipart.ts';
import type { State } from './state.ts';
import { until } from './until.ts';

/** What a test watches of one delivered interaction. Every promise rejects when the bot does nothing in time. */
export interface InteractionHandle {
  readonly id: string;
  readonly interaction: Interaction;
  /** The callback that was taken: its type, body and milliseconds since delivery. */
  readonly acknowledged: Promise<Callback>;
  /** The answer: the message of the callback, or after a deferral the first edit. */
  readonly reply: Promise<Sent>;
  /** The suggestions of an autocomplete answer. */
  readonly choices: Promise<readonly Json[]>;
  /** The form the bot opened. */
  readonly modal: Promise<Json>;
  /** The nth try to answer, taken or refused. */
  readonly callback: (n?: number) => Promise<Callback>;
  readonly edit: (n?: number) => Promise<Sent>;
  readonly followUp: (n?: number) => Promise<Sent>;
}

export function interactionHandle(state: State, interaction: Interaction): InteractionHandle {
  const dataOf = (type: number): Json | undefined => {
    const accepted = interaction.accepted;
    return accepted?.type === type ? callbackData(accepted.body) : undefined;
  };
  return {
    id: interaction.id,
    interaction,
    get acknowledged() {
      return until(state, () => interaction.accepted, 'acknowledge the interaction');
    },
    get reply() {
      return until(state, () => interaction.reply, 'reply to the interaction');
    },
    get choices() {
      return until(state, () => dataOf(8), 'suggest choices').then((data) =>
        list(data['choices']).map(record),
      );
    },
    get modal() {
      return until(state, () => dataOf(9), 'open a form');
    },
    callback: (n = 0) => until(state, () => interaction.callbacks[n], `answer (try ${n + 1})`),
    edit: (n = 0) => until(state, () => interaction.edits[n], `make edit ${n + 1}`),
    followUp: (n = 0) => until(state, () => interaction.followUps[n], `send follow-up ${n + 1}`),
  };
}
