import { selects } from './component.ts';
import { type Json, list, record, text, whole } from './json.ts';
import { upload } from './message.ts';
import type { GivenFile } from './slash-options.ts';
import type { State } from './state.ts';

/** What a member writes, chooses or uploads, by the custom ids of the fields. */
export type FormFields = Readonly<Record<string, string | GivenFile>>;

const fileUpload = 19;
const radioGroup = 21;

/** A form as Discord sends it, filled in; choosing what a field does not offer throws, as its own client would not let them. */
export function filledForm(
  state: State,
  modal: Json,
  fields: FormFields,
): { readonly components: readonly Json[]; readonly resolved: Json } {
  const attachments: Record<string, Json> = {};
  const value = (field: Json): Json => {
    const id = text(field['custom_id']);
    const given = fields[id] ?? '';
    const base = { type: field['type'], custom_id: id };
    if (typeof given !== 'string') {
      if (field['type'] !== fileUpload) throw new Error(`"${id}" takes no file`);
      const attachment = upload(state, { field: '', ...given });
      attachments[text(attachment['id'])] = attachment;
      return { ...base, values: [attachment['id']] };
    }
    const offered = list(field['options']).map((each) => record(each)['value']);
    if (offered.length > 0 && given !== '' && !offered.includes(given))
      throw new Error(`"${id}" does not offer "${given}"`);
    if (field['type'] === fileUpload || selects.has(field['type']))
      return { ...base, values: given === '' ? [] : [given] };
    return { ...base, value: field['type'] === radioGroup && given === '' ? null : given };
  };
  const components = list(modal['components']).map((each) => {
    const part = record(each);
    const id = whole(part['id']);
    if (part['component']) return { type: part['type'], id, component: value(record(part['component'])) };
    return { type: part['type'], id, components: list(part['components']).map((one) => value(record(one))) };
  });
  const resolved = Object.keys(attachments).length === 0 ? {} : { resolved: { attachments } };
  return { components, resolved };
}
