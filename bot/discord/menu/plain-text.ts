/** Names of people, channels, roles and emoji, times, and addresses: their digits are no numbers of the writer. */
const tokens = /<(?:[@#][!&]?|a?:\w+:|t:|\/[^:>]*:)[^>\s]*>|https?:\/\/\S+/g;
const marks = /\*\*|__|~~|\|\||`+/g;
const lineMarks = /^[ \t]*(?:>>> |> |#{1,3} |-# |[-*] )/gm;

/** What someone wrote on Discord, without what only Discord reads in it. */
export function plainText(content: string): string {
  return content.replace(tokens, ' ').replace(marks, ' ').replace(lineMarks, '').trim();
}
