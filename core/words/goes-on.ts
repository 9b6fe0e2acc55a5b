import { coralsIn } from './corals.ts';
import { hear } from './hear.ts';
import { formIn, parametersIn } from './names.ts';

/** Words a sentence begins with that goes on from what was said before. */
const GOES_ON =
  /^\W*(?:and|or|but|ok(?:ay)?|then|also|sorry|oops|no|yes|i meant?|make (?:it|that)|(?:what|how) (?:about|if)|instead|same)\b/;
/** Words that begin a new question just as often: only a sentence of a few words goes on with them. */
const MAY_GO_ON =
  /^\W*(?:so|its|it's|it is|that's|thats|in|with|for|over|using|at|to|from|want|need|goal|target|(?:the|my) (?:tank|system|volume)|tank|volume|it holds|i have)\b/;
/** Longer than this a sentence is a question of its own: taking it for the rest of another would mix two. */
const MOST_LETTERS = 80;
const MOST_LETTERS_OF_FEW_WORDS = 40;

/**
 * Words that may stand in a sentence that goes on and ask nothing new. Any other word ("salt", "how much", "teaspoons")
 * makes it a question of its own: what is not known is never put into an earlier question.
 */
const LINKS = new Set(
  (
    'a about again aim alone also an and approx are around at be but by can change changes coral could day days do each every for ' +
    "from get goal going guess has have hey hm hmm hold holds how i i'm if in instead is it it's its just less like make maybe me mean " +
    'meant month more my need net no not now of ok okay only oops or our over per percent please pls point probably rather raise read ' +
    "reading reads really same say should so sorry start starts starting still system take tank target test tested thanks that that's " +
    'thats the then there they this though till to today total try until up us imp imperial use using volume want was water we week ' +
    'weekly weeks well what when will with would yeah yes you'
  ).split(' '),
);
/** Of these, the words that say nothing at all: a value or a name alone may have them beside it. */
const QUIET = new Set('a about an coral imp imperial is net of system tank the total us water'.split(' '));

/** Words a sentence that goes on begins with and that do not belong to what it says. */
export const LEAD =
  /^\W*(?:(?:and|or|but|ok(?:ay)?|then|also|sorry|oops|no|yes|i meant?|make (?:it|that)|(?:what|how) (?:about|if)|instead|same|so|its|it's|it is|that's|thats)\b[\s,]*)+/;

/** Whether a sentence begins as one that goes on from another, or is nothing but a value or a name. */
export function goesOn(text: string): boolean {
  const heard = hear(text);
  const { text: cleaned } = heard;
  if (cleaned === '' || cleaned.length > MOST_LETTERS) return false;
  const words = wordsBesides(heard);
  const begins =
    GOES_ON.test(cleaned) || (MAY_GO_ON.test(cleaned) && cleaned.length <= MOST_LETTERS_OF_FEW_WORDS);
  return words.every((word) => (begins ? LINKS : QUIET).has(word));
}

/** The words that are no number, unit, compound, parameter or coral. */
function wordsBesides({ text, mentions, compounds }: ReturnType<typeof hear>): readonly string[] {
  const form = formIn(text);
  const named = form === undefined ? compounds : [...compounds, form];
  const spans = [...mentions, ...named, ...parametersIn(text, [...named, ...mentions])];
  const rest = coralsIn(text).reduce((left, { name }) => left.replace(name, ' '), spans.reduce(blank, text));
  return rest.replaceAll(/\b(?:salinity|sg)\b/g, ' ').match(/[a-z']{2,}/g) ?? [];
}

function blank(from: string, { start, end }: { readonly start: number; readonly end: number }): string {
  return from.slice(0, start) + ' '.repeat(end - start) + from.slice(end);
}
