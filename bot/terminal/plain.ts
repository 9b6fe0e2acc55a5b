const LINE_BREAKS = /[\t\n\r\u2028\u2029]+/g;

/**
 * Text that cannot steer a terminal: line breaks become spaces, control characters visible signs (ESC -> "␛"),
 * and invisible format characters (direction marks, joiners) are dropped.
 */
export function plain(text: string): string {
  return text
    .replace(LINE_BREAKS, ' ')
    .replace(/\p{Cc}|\p{Cs}/gu, sign)
    .replace(/\p{Cf}/gu, '');
}

function sign(character: string): string {
  const code = character.charCodeAt(0);
  if (code === 0x7f) return '␡';
  return code < 0x20 ? String.fromCharCode(0x2400 + code) : '\uFFFD';
}

/** The first `most` characters, with "..." where something was left out. */
export function shortened(text: string, most: number): string {
  return text.length <= most ? text : `${text.slice(0, most - 3)}...`;
}

/** Text as a regular expression that matches exactly it. */
export function literally(text: string): string {
  return text.replaceAll(/[\\^$.*+?()[\]{}|/]/g, String.raw`\$&`);
}
