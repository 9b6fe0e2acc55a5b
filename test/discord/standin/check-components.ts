import { below, displayedText, everyComponent, kind, selects } from './component.ts';
import { absent, type Json, list, record, text } from './json.ts';
import { listWithin, numberWithin, type Spot, textWithin, within } from './spot.ts';

const inRow: ReadonlySet<unknown> = new Set([kind.button, ...selects]);
const inContainer: ReadonlySet<unknown> = new Set([
  kind.row,
  kind.section,
  kind.text,
  kind.gallery,
  kind.file,
  kind.separator,
]);
const top: ReadonlySet<unknown> = new Set([...inContainer, kind.container]);
const linkStyle = 5;
const premiumStyle = 6;

/** Checks the components of a message, with or without the Components V2 flag. */
export function checkComponents(here: Spot, message: Json, v2: boolean): void {
  if (!absent(message['components']) && !Array.isArray(message['components'])) {
    return here.at('components').fail('type', 'Must be a list');
  }
  const components = list(message['components']).map(record);
  const allowed: ReadonlySet<unknown> = v2 ? top : new Set([kind.row]);
  if (v2) {
    within(here.at('components'), everyComponent(components).length, 'component.total');
    within(here.at('components'), displayedText(components).join('').length, 'component.text');
  } else within(here.at('components'), components.length, 'message.rows');
  checkChildren(here, 'components', components, allowed);
  checkIds(here, components);
}

/** No custom_id and no numeric id may be used twice in one message or form. */
export function checkIds(here: Spot, components: readonly Json[]): void {
  for (const key of ['custom_id', 'id']) {
    const ids = everyComponent(components)
      .map((each) => each[key])
      .filter((id) => !absent(id) && id !== 0);
    const twice = ids.find((id, index) => ids.indexOf(id) !== index);
    if (twice !== undefined) here.at('components').fail('component.customIdTwice', `${key} used twice`);
  }
}

function checkChildren(
  here: Spot,
  key: string,
  children: readonly Json[],
  allowed: ReadonlySet<unknown>,
): void {
  children.forEach((child, index) => {
    const at = here.at(key, index);
    if (allowed.has(child['type'])) checkComponent(at, child);
    else at.fail('component.place', `Type ${String(child['type'])} is not allowed here`);
  });
}

const checks: Readonly<Record<number, (here: Spot, component: Json) => void>> = {
  [kind.row]: checkRow,
  [kind.button]: checkButton,
  [kind.section]: checkSection,
  [kind.text]: (here, each) => textWithin(here.at('content'), each['content'], 'text.content', true),
  [kind.thumbnail]: checkMedia,
  [kind.gallery]: (here, each) => {
    const items = listWithin(here, each, 'items', 'gallery.items').map(record);
    items.forEach((item, index) => checkMedia(here.at('items', index), item));
  },
  [kind.file]: (here, each) => {
    if (!text(record(each['file'])['url']).startsWith('attachment://')) {
      here.at('file').fail('component.shape', 'A file component shows an attachment of its message');
    }
  },
  [kind.separator]: (here, each) => {
    if (![undefined, 1, 2].includes(each['spacing'] as number | undefined)) {
      here.at('spacing').fail('component.shape', 'Spacing is 1 or 2');
    }
  },
  [kind.container]: (here, each) => {
    numberWithin(here.at('accent_color'), each['accent_color'], 'container.accent');
    const children = list(each['components']).map(record);
    if (children.length === 0) here.fail('component.shape', 'A container is not empty');
    checkChildren(here, 'components', children, inContainer);
  },
};

function checkComponent(here: Spot, component: Json): void {
  const type = component['type'] as number;
  (selects.has(type) ? checkSelect : checks[type])?.(here, component);
}

function checkRow(here: Spot, row: Json): void {
  const children = listWithin(here, row, 'components', 'row.buttons').map(record);
  if (children.some((each) => selects.has(each['type'])) && children.length > 1) {
    here.fail('component.shape', 'A select menu takes a row of its own');
  }
  checkChildren(here, 'components', children, inRow);
}

function checkSection(here: Spot, section: Json): void {
  const texts = listWithin(here, section, 'components', 'section.texts').map(record);
  checkChildren(here, 'components', texts, new Set([kind.text]));
  const accessories = below(section).slice(texts.length);
  if (accessories.length !== 1) here.fail('component.shape', 'A section has one accessory');
  checkChildren(here, 'accessory', accessories, new Set([kind.button, kind.thumbnail]));
}

function checkButton(here: Spot, button: Json): void {
  const style = button['style'];
  const has = (key: string): boolean => !absent(button[key]);
  textWithin(here.at('label'), button['label'], 'button.label');
  textWithin(here.at('url'), button['url'], 'button.url', style === linkStyle);
  const plain = typeof style === 'number' && style >= 1 && style < linkStyle;
  textWithin(here.at('custom_id'), button['custom_id'], 'component.customId', plain);
  if (!plain && style !== linkStyle && style !== premiumStyle) here.fail('component.shape', 'Unknown style');
  if (plain && has('url')) here.fail('component.shape', 'Only a link button has a url');
  if (!plain && has('custom_id')) here.fail('component.shape', 'A link button has no custom_id');
  if (style !== premiumStyle && !has('label') && !has('emoji')) {
    here.fail('component.shape', 'A button needs a label or an emoji');
  }
}

function checkMedia(here: Spot, holder: Json): void {
  textWithin(here.at('description'), holder['description'], 'media.description');
  if (!/^(https?|attachment):\/\/./.test(text(record(holder['media'])['url']))) {
    here.at('media').fail('component.shape', 'Media needs an http, https or attachment address');
  }
}

/** Checks a select menu of any kind; only the string select lists its options. */
export function checkSelect(here: Spot, select: Json): void {
  textWithin(here.at('custom_id'), select['custom_id'], 'component.customId', true);
  textWithin(here.at('placeholder'), select['placeholder'], 'select.placeholder');
  numberWithin(here.at('min_values'), select['min_values'], 'select.minValues');
  numberWithin(here.at('max_values'), select['max_values'], 'select.maxValues');
  if (select['type'] !== kind.stringSelect) return;
  const options = listWithin(here, select, 'options', 'select.options').map(record);
  options.forEach((option, index) => {
    const at = here.at('options', index);
    textWithin(at.at('label'), option['label'], 'selectOption.label', true);
    textWithin(at.at('value'), option['value'], 'selectOption.value', true);
    textWithin(at.at('description'), option['description'], 'selectOption.description');
  });
  const values = options.map((option) => option['value']);
  const chosen = options.filter((option) => option['default'] === true).length;
  if (new Set(values).size < values.length) here.fail('component.shape', 'Two options have one value');
  if (chosen > ((select['max_values'] as number | undefined) ?? 1)) {
    here.fail('component.shape', 'More options are chosen than may be');
  }
}
