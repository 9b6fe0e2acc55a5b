import { type Json, record, text } from './json.ts';
import { listWithin, type Spot, textWithin, within } from './spot.ts';

/** Checks the embeds of a message; the total counts the text of all of them together. */
export function checkEmbeds(here: Spot, message: Json): void {
  const embeds = listWithin(here, message, 'embeds', 'message.embeds').map(record);
  const sizes = embeds.map((embed, index) => checkEmbed(here.at('embeds', index), embed));
  within(
    here.at('embeds'),
    sizes.reduce((sum, size) => sum + size, 0),
    'embed.total',
  );
}

function checkEmbed(here: Spot, embed: Json): number {
  const footer = record(embed['footer'])['text'];
  const author = record(embed['author'])['name'];
  textWithin(here.at('title'), embed['title'], 'embed.title');
  textWithin(here.at('description'), embed['description'], 'embed.description');
  textWithin(here.at('footer', 'text'), footer, 'embed.footer');
  textWithin(here.at('author', 'name'), author, 'embed.author');
  const fields = listWithin(here, embed, 'fields', 'embed.fields').map(record);
  fields.forEach((field, index) => {
    textWithin(here.at('fields', index, 'name'), field['name'], 'embed.fieldName', true);
    textWithin(here.at('fields', index, 'value'), field['value'], 'embed.fieldValue', true);
  });
  const texts = [embed['title'], embed['description'], footer, author];
  for (const field of fields) texts.push(field['name'], field['value']);
  return texts.reduce<number>((sum, each) => sum + text(each).length, 0);
}
