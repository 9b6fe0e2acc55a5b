import { allRight, beginning, foreign, hello, standing, unreadable, welcome } from '../help/talk.ts';
import { says, type Intent } from './intent.ts';

/** More words than this ask something. */
const MOST_WORDS = 10;
const isShort = (text: string): boolean => text.split(' ').length <= MOST_WORDS;

const LEAD = String.raw`^(?:(?:hi+|hey+|hello|helo|yo|so|ok(?:ay)?|please|pls|um+|good (?:morning|evening|day))\b[\s,.!]*)*`;
const GREETS = new RegExp(
  String.raw`^(?:hi+|hey+|hello|helo|yo|sup|good (?:morning|evening|day|night)|howdy|greetings|hi there|hello there|anyone (?:here|there)|test(?:ing)?|help|help me|help please|can (?:you|someone|anyone) help(?: me)?|i need help)[\s!.,?]*(?:all|everyone|there|bot|guys|folks)?[\s!.,?]*$`,
);
const ABOUT_IT = new RegExp(
  String.raw`${LEAD}(?:what (?:is|are) (?:this|you)|what'?s this|who (?:are you|made you|is this)|are you (?:a |an )?(?:bot|human|real|robot|ai|person)|what (?:can|do) (?:you|i) (?:do|ask|type)(?: here)?|how (?:does|do) (?:this|it|you) work|how (?:do|can) i use (?:this|you|it)|what can i ask)\b`,
);
const THANKS =
  /^(?:(?:ok(?:ay)?|cool|great|nice|perfect|awesome|got it|alright|lol)[\s,!.]+)*(?:thanks?|thank you|thx|ty|cheers|good bot|you'?re (?:great|awesome|the best))\b(?:[\s,!.]*(?:so much|a lot|very much|you|bot|thanks?|man|mate|all|everyone|that helped|bye|for (?:the|your) help))*[\s!.]*$/;
const NODS =
  /^(?:(?:ok(?:ay)?|k|cool|great|nice|perfect|awesome|got it|alright|all right|understood|lol|haha+|wow|yes|yep|yeah|no|nope|bye|good ?night|see you)[\s,!.]*)+$/;
const STARTS = new RegExp(
  String.raw`${LEAD}(?:i'?m (?:new|a (?:newbie|noob|beginner))|im (?:new|a (?:newbie|noob|beginner))|(?:total |complete )?(?:newbie|beginner|noob)|new here|(?:how (?:do|can|should) i|how to|where (?:do|should) i|help me|want to|i want to|i'?d like to) (?:start|begin|get started|get into|set ?up)(?: (?:a|my|the|with|in|out|keeping|reef\w*|tank|aquarium|corals?|hobby|this|salt ?water|new|first|here|it|nano|small))*[\s?!.]*$|i want (?:a|to have a|to keep a) (?:reef|tank|coral|aquarium)|first (?:reef|tank|aquarium)\b)`,
);
const HOW_IS_IT =
  /^(?:(?:hi|hey|so|ok|and)[\s,]+)*(?:is (?:my|the) (?:tank|reef|water|aquarium) (?:ok(?:ay)?|fine|good|healthy|alright|all right)|how(?:'s| is|s) my (?:tank|reef|water)|what (?:do|should) i do (?:now|next|today)|what now|what'?s next|anything (?:i should|to) do)(?: (?:ok(?:ay)?|doing|now|looking|today|with (?:it|my tank)))*[\s?!.]*$/;
/** Words of other languages that cry for help or greet. */
const FOREIGN = [
  'hola',
  'ayuda',
  'por favor',
  'gracias',
  'muriendo',
  'pez',
  'peces',
  'hilfe',
  'hallo',
  'bitte',
  'danke',
  'stirbt',
  'fisch\\w*',
  'mein\\w*',
  'bonjour',
  'salut',
  'merci',
  'poissons?',
  'au secours',
  'aidez',
  'aiuto',
  'pesce',
  'ola',
  'ajuda',
  'obrigad[oa]',
  'peixe',
] as const;

/** Somebody greets, thanks, begins, asks how it stands, or writes what cannot be read. */
export const newcomerIntent: Intent = (heard, context) => {
  const { text, given } = heard;
  const unread = unreadable(given);
  if (unread !== undefined) return unread;
  if (heard.mentions.length > 0) return undefined;
  if (says(heard, ...FOREIGN)) return foreign;
  if (!isShort(text)) return undefined;
  if (THANKS.test(text)) return welcome;
  if (NODS.test(text)) return allRight;
  if (STARTS.test(text)) return beginning();
  if (HOW_IS_IT.test(text)) return standing(context);
  return GREETS.test(text) || ABOUT_IT.test(text) ? hello() : undefined;
};
