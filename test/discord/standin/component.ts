import { type Json, list, record, text } from './json.ts';

/** Component types by their number on the wire. */
export const kind = {
  row: 1,
  button: 2,
  stringSelect: 3,
  textInput: 4,
  userSelect: 5,
  channelSelect: 8,
  section: 9,
  text: 10,
  thumbnail: 11,
  gallery: 12,
  file: 13,
  separator: 14,
  container: 17,
  label: 18,
} as const;

export const selects: ReadonlySet<unknown> = new Set([3, 5, 6, 7, 8]);

/** Components directly below this one: children, a section's accessory, a label's field. */
export function below(component: Json): readonly Json[] {
  const single = [component['accessory'], component['component']].filter((each) => each !== undefined);
  return [...list(component['components']), ...single].map(record);
}

/** A list of components and everything nested in them, outermost first. */
export function everyComponent(components: unknown): readonly Json[] {
  return list(components)
    .map(record)
    .flatMap((each) => [each].concat(everyComponent(below(each))));
}

/** The text of all text displays, top to bottom. */
export function displayedText(components: unknown): readonly string[] {
  return everyComponent(components)
    .filter((each) => each['type'] === kind.text)
    .map((each) => text(each['content']));
}

/** The media addresses components and embeds show. */
export function mediaUrls(message: Json): readonly string[] {
  const components = everyComponent(message['components']);
  const holders = [...components, ...components.flatMap((each) => list(each['items'])).map(record)];
  const embeds = list(message['embeds']).map(record);
  const pictures = embeds.flatMap((embed) => [record(embed['image']), record(embed['thumbnail'])]);
  const shown = [
    ...holders.map((each) => record(each['media'])),
    ...holders.map((each) => record(each['file'])),
  ];
  return [...shown, ...pictures].map((each) => text(each['url'])).filter((url) => url !== '');
}
