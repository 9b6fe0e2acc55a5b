import { Problem } from '../problem.ts';
import { say } from '../wording/say.ts';

/** How a lone comma before exactly three digits is meant: 1,350 is 1350 or 1.35. */
export type CommaStyle = 'decimal' | 'thousands';

const TOKEN = /(?:\d[\d.,]*)|(?:[.,]\d+)/g;
const LONE_COMMA_THREE = /^[1-9]\d{0,2},\d{3}$/;
const GROUPED = /^\d{1,3}(?:([.,])\d{3})(?:\1\d{3})*$/;

/** Whether the text holds a number whose comma can be read both ways. */
export function hasAmbiguousComma(text: string): boolean {
  return text.includes(',') && (text.match(TOKEN) ?? []).some((token) => LONE_COMMA_THREE.test(token));
}

/**
 * Rewrites every number of the text with a decimal point and no thousands marks: "8,3" -> "8.3",
 * "1.234,5" -> "1234.5", "1,234.5" -> "1234.5". A lone "1,350" follows `style`.
 *
 * @throws Problem for a number such as "1.2.3" or "12,34,5".
 */
export function normaliseNumbers(text: string, field: string, style: CommaStyle): string {
  return text.replace(TOKEN, (token, offset: number) => {
    const trailing = /[.,]+$/.exec(token)?.[0] ?? '';
    const end = offset + token.length === text.length || text[offset + token.length] === ' ';
    const body = trailing !== '' && end ? token.slice(0, -trailing.length) : token;
    return normaliseNumber(body, field, style);
  });
}

function normaliseNumber(token: string, field: string, style: CommaStyle): string {
  const commas = token.split(',').length - 1;
  const points = token.split('.').length - 1;
  if (commas === 0 && points <= 1) return token;
  if (LONE_COMMA_THREE.test(token)) return token.replace(',', style === 'decimal' ? '.' : '');
  if (commas === 1 && points === 0) return token.replace(',', '.');
  if (commas > 0 && points > 0) {
    const mark = token.lastIndexOf(',') > token.lastIndexOf('.') ? ',' : '.';
    const group = mark === ',' ? '.' : ',';
    const whole = token.slice(0, token.lastIndexOf(mark));
    if (GROUPED.test(whole) && !whole.includes(mark)) {
      return `${whole.replaceAll(group, '')}.${token.slice(token.lastIndexOf(mark) + 1)}`;
    }
  } else if (GROUPED.test(token)) {
    return token.replaceAll(/[.,]/g, '');
  }
  throw new Problem(say('convert.noNumber', { token }), {
    field,
    given: token,
    hint: say('convert.hintNumber'),
  });
}
