import { checkChoice } from './check-command.ts';
import { checkMessage } from './check-message.ts';
import { checkModal } from './check-modal.ts';
import type { Interaction } from './interaction.ts';
import { type Json, list, record, whole } from './json.ts';
import { callbackData, type FilePart } from './multipart.ts';
import { beforeEdit } from './before-edit.ts';
import { listWithin, type Spot } from './spot.ts';

/** Callback types that answer each type of interaction. */
const allowed: Readonly<Record<number, readonly number[]>> = {
  2: [4, 5, 9],
  3: [4, 5, 6, 7, 9],
  4: [8],
  5: [4, 5, 6, 7],
};

/** Checks the first answer to an interaction: its type and what it carries. */
export function checkCallback(
  here: Spot,
  body: Json,
  interaction: Interaction,
  files: readonly FilePart[],
): void {
  const type = whole(body['type']);
  const data = callbackData(body);
  const at = here.at('data');
  const updates = type === 6 || type === 7;
  if (!allowed[interaction.type]?.includes(type) || (updates && !interaction.source)) {
    return here.at('type').fail('callback.type', `Type ${type} cannot answer this interaction`);
  }
  if (type === 4) checkMessage(at, data, { way: 'reply', files });
  if (type === 5) checkMessage(at, data, { way: 'defer', files });
  if (type === 7 && interaction.source) {
    checkMessage(at, data, { way: 'edit', files, before: beforeEdit(interaction.source) });
  }
  if (type === 8) checkChoices(at, data, interaction);
  if (type === 9) checkModal(at, data);
}

function checkChoices(here: Spot, data: Json, interaction: Interaction): void {
  const choices = listWithin(here, data, 'choices', 'autocomplete.choices').map(record);
  const kind = focusedKind(list(record(interaction.payload['data'])['options']));
  choices.forEach((choice, index) => checkChoice(here.at('choices', index), choice, kind));
}

/** The type of the option being typed, in a command or its subcommand. */
function focusedKind(options: readonly unknown[]): number {
  const level = options.map(record);
  const focused = level.find((each) => each['focused'] === true);
  if (focused || level.length === 0) return whole(focused?.['type']);
  return focusedKind(level.flatMap((each) => list(each['options'])));
}
