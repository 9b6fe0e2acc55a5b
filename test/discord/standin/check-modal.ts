import { checkIds, checkSelect } from './check-components.ts';
import { kind, selects } from './component.ts';
import { type Json, list, record } from './json.ts';
import { listWithin, numberWithin, type Spot, textWithin } from './spot.ts';

const fileUpload = 19;
const radioGroup = 21;
const otherFields: ReadonlySet<unknown> = new Set([fileUpload, 21, 22, 23]);

/** Checks a form: title, custom_id, and up to five labels, rows or text displays. */
export function checkModal(here: Spot, modal: Json): void {
  textWithin(here.at('title'), modal['title'], 'modal.title', true);
  textWithin(here.at('custom_id'), modal['custom_id'], 'component.customId', true);
  const parts = listWithin(here, modal, 'components', 'modal.components').map(record);
  parts.forEach((part, index) => {
    const at = here.at('components', index);
    if (part['type'] === kind.label) checkLabel(at, part);
    else if (part['type'] === kind.row) checkInputRow(at, part);
    else if (part['type'] === kind.text) textWithin(at.at('content'), part['content'], 'text.content', true);
    else at.fail('component.place', `Type ${String(part['type'])} is not allowed in a form`);
  });
  checkIds(here, parts);
}

function checkLabel(here: Spot, label: Json): void {
  textWithin(here.at('label'), label['label'], 'label.text', true);
  textWithin(here.at('description'), label['description'], 'label.description');
  const field = record(label['component']);
  const at = here.at('component');
  if (field['type'] === kind.textInput) checkInput(at, field);
  else if (selects.has(field['type'])) checkSelect(at, field);
  else if (otherFields.has(field['type'])) {
    if (field['type'] === radioGroup) checkRadios(at, field);
    textWithin(at.at('custom_id'), field['custom_id'], 'component.customId', true);
  } else at.fail('component.place', 'A label holds one field');
}

/** Two to ten, at most one of them chosen from the start; values and words of 100 characters. */
function checkRadios(here: Spot, field: Json): void {
  const options = list(field['options']).map(record);
  if (options.length < 2 || options.length > 10)
    here.fail('component.shape', 'A radio group has 2 to 10 options');
  if (options.filter((each) => each['default'] === true).length > 1)
    here.fail('component.shape', 'One option at most is chosen from the start');
  options.forEach((each, index) => {
    const at = here.at('options', index);
    textWithin(at.at('label'), each['label'], 'choice.name', true);
    textWithin(at.at('value'), each['value'], 'choice.value', true);
  });
}

function checkInputRow(here: Spot, row: Json): void {
  const inputs = list(row['components']).map(record);
  const only = inputs[0];
  if (inputs.length !== 1 || only?.['type'] !== kind.textInput) {
    return here.fail('component.place', 'A row of a form holds one text input');
  }
  const at = here.at('components', 0);
  textWithin(at.at('label'), only['label'], 'input.label', true);
  checkInput(at, only);
}

function checkInput(here: Spot, input: Json): void {
  textWithin(here.at('custom_id'), input['custom_id'], 'component.customId', true);
  textWithin(here.at('placeholder'), input['placeholder'], 'input.placeholder');
  textWithin(here.at('value'), input['value'], 'input.value');
  numberWithin(here.at('min_length'), input['min_length'], 'input.minLength');
  numberWithin(here.at('max_length'), input['max_length'], 'input.maxLength');
  if (input['style'] !== 1 && input['style'] !== 2) here.fail('component.shape', 'Style is 1 or 2');
}
