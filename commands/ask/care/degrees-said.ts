import { limitsOf, sideOf } from '../../../core/water/limits.ts';

/** A bare number of water from here up is °F, and so is a lower one that it has moved to and that is no tank's °C. */
const LEAST_F = 60;
const TANK_C = { low: 10, high: 45 } as const;

const BODY = String.raw`(?<subject>tank|water|reef|aquarium|display|sump|it)(?:'?s| temp\w*)?`;
const READS = String.raw`(?:is|was|has|just|now|already|only|currently|at|hits?|reached|reads?|reading|showing|sitting|(?:down|up|dropped|climbed|fell|rose|went|shot up|got) to)`;
/** What may follow a number that has no unit; a word of any other kind is its unit. */
const ENDS = String.raw`(?= *(?:$|[;!?]|[,.](?!\d)|(?:in (?:the|my|our) (?:tank|water|sump|aquarium)|now|and|help|what|right|today|this|already|overnight|because|after|since|when|while|how)\b))`;
const BARE = new RegExp(
  String.raw`\b${BODY}(?<verbs>(?: ${READS})*) (?<number>\d{2,3}(?:[.,]\d)?)(?![\d.]*\d)${ENDS}`,
);
/** Then the number is of something else. */
const OTHER =
  /\b(?:par|lux|sal(?:t|in)\w*|refract\w*|hydrometer|sg|alk\w*|dkh|calcium|magnesium|nitrate|phosphate|ph|ppt|ppm|gal\w*|lit\w*|liters?|inch\w*|cm|fish|corals?|watts?|flow|turnover|percent|humidity|room|years?|days?|weeks?|months?|old|price|cost|volume|size|long|tall|wide)\b|%/;

/** "86 degrees" without a letter, "tank hit 102", "it's 104 in the tank", by the scale it can only be of. */
export function degreesSaid(text: string): string | undefined {
  const [frozen] = /(?<![\d.\w])-\d{1,3}(?:\.\d)? ?°?[cf](?![a-z])/.exec(text) ?? [];
  if (frozen !== undefined) return frozen;
  const [, number = ''] =
    /(?<![\d.])(\d{2}(?:\.\d)?) ?(?:degrees?|deg|°)(?! ?(?:k?h|[cf])(?![a-z]))(?![a-z])/.exec(text) ?? [];
  return number === '' ? bareSaid(text) : withScale(number);
}

/** Salt of the sea is told as bare numbers, too: what can be either is left alone unless it has moved there. */
function bareSaid(text: string): string | undefined {
  const { subject = '', verbs = '', number = '' } = BARE.exec(text)?.groups ?? {};
  if (number === '' || OTHER.test(text)) return undefined;
  const isOfIt = subject === 'it' && !/ (?:tank|water|sump|aquarium)\b/.test(text);
  const isSaid = verbs !== '' || subject === 'water' || /\b(?:it|water|tank)'?s /.test(text);
  if (isOfIt || !isSaid || isSize(subject, verbs, Number(number))) return undefined;
  const value = Number(number);
  const isMoved = / (?:to|hits?|reached)$/.test(verbs);
  if (!isMoved && sideOf(value, limitsOf('salinity').usual) === undefined) return undefined;
  if (value < TANK_C.low || (value > TANK_C.high && value < LEAST_F && !isMoved)) return undefined;
  return withScale(number);
}

/** "my tank is 120": tanks are sold in round numbers. */
function isSize(subject: string, verbs: string, value: number): boolean {
  return !['it', 'water'].includes(subject) && /^(?: (?:is|was|only|just))*$/.test(verbs) && value % 5 === 0;
}

function withScale(number: string): string {
  return `${number} ${Number(number) > TANK_C.high ? 'F' : 'C'}`;
}
