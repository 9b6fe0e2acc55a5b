import type { NumberSpan } from '../scan/number-span.ts';

/**
 * What may stand between a name and its reading, by language, without marks. Only what can mean nothing but "it reads":
 * "auf", "à", "naar" alone may be where it should go.
 */
const phrases: ReadonlySet<string> = new Set(
  [
    'er, er nu, er pa, er nu pa, ligger pa, ligger nu pa, er faldet til, viser',
    'is, is nu, staat op, staat nu op, zit op, ligt op, is gezakt naar, is gedaald naar, is maar',
    'est, est a, est de, est maintenant a, est maintenant de, est tombe a, est tombee a, est descendu a',
    'ist, ist jetzt, ist bei, ist jetzt bei, liegt bei, liegt jetzt bei, liegt aktuell bei, steht bei, betragt, zeigt, ist nur noch, nur noch',
    'e, e a, e di, e ora a, e sceso a, e scesa a, sta a, segna',
    'jest, wynosi, mam na poziomie, jest na poziomie, spadlo do, spadlo mi do, pokazuje',
    'esta, esta em, esta a, esta nos, caiu para, marca',
    'es, es de, es ahora, esta en, esta a, ahora esta en, ha bajado a, bajo a',
    'ahora, agora, jetzt, aktuell, nu, maintenant, adesso, teraz',
  ].flatMap((line) => line.split(', ')),
);

/** The most characters between a name and its number. */
export const MOST_BETWEEN = 40;
/** Behind a number and its unit: how often ("pro Tag", "por semana"), or another number it goes to ("7 a 8", "7 bis 8"). */
const GOES_ON =
  /[\d.,]*\d\s?[%‰°]?[\p{L}/]*\s+(?:(?:pro|par|por|per|al|ao|om|na|je|hver|co|chaque|cada|ogni|elke|jede[nrs]?|dziennie|tygodniowo|diari\p{L}*|daglig\p{L}*|dagelijks|täglich|wöchentlich)(?!\p{L})|(?:a|à|bis|auf|tot|naar|til|do|para|hasta|até|of|o|ou|oder|eller|lub|albo)\s+\d)/uy;

/** Whether a number is a rate, the first of two, or a span: then it is no reading and no size of a tank. */
export function goesOnFrom(text: string, number: NumberSpan): boolean {
  if (number.high !== undefined || number.everyDays !== undefined) return true;
  GOES_ON.lastIndex = number.start;
  return GOES_ON.test(text);
}

/** Whether the text between a name and a number says no more than "is". */
export function isReading(between: string): boolean {
  if (between.length > MOST_BETWEEN || /[^\p{L}\s:=~]/u.test(between)) return false;
  const words = between.replace(/[\s:=~]+/g, ' ').trim();
  return words === '' || phrases.has(words);
}
