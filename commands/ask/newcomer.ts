import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { checkupCommand } from '../checkup.ts';
import { answerOf } from '../defaults.ts';
import { openCard } from '../primer/card-answer.ts';
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

const TROUBLE: readonly NextAction[] = [
  action('Something looks wrong', 'triage', {}),
  action('It is urgent', 'urgent', {}),
];
const READINGS: NextAction = action('Check my readings', 'checkup', {}, ['readings']);

function hello(): Answer {
  return answer({
    headline: 'Hello! I am a bot: tell me about your reef tank in your own words, and I say what to do next.',
    steps: [
      'What it reads: "alk 8, calcium 420, salinity 35 ppt, 25 C". I say whether that is fine.',
      'What you see: "my torch is closed". In trouble: /urgent.',
      'What you wonder: "what is limewater", "what should my salinity be", "can a torch sit next to a hammer".',
      '/help shows all I can do.',
    ],
    next: [action('I am starting a tank', 'primer', { card: 'cycle' }), READINGS, ...TROUBLE],
  });
}

function beginning(): Answer {
  return answer({
    headline:
      'Welcome! Slowly is the quickest way: salt water first, then weeks of cycling, then one hardy animal.',
    steps: [
      'Read the short cards below, in this order.',
      'Mains and water first: every plug behind a ground-fault switch, every cable with a drip loop.',
      'Mix salt water with RO water, and check the salinity with an instrument you have checked.',
      'Let the tank cycle until ammonia and nitrite both read none and stay there, often three to six weeks.',
      'Then a few snails, then one hardy coral or fish, and two weeks of watching before the next.',
      'Keep the tank here with /tank new: after that I work with your litres.',
    ],
    cautions: ['Times are common practice: keepers differ.'],
    sources: ['practice'],
    next: ['water and mains', 'mixing salt water', 'cycle', 'first corals'].map(openCard),
  });
}

/** Somebody greets, thanks, begins, asks how it stands, or writes what cannot be read. */
export const newcomerIntent: Intent = (heard, context) => {
  const { text, given } = heard;
  if (!/[a-z0-9]/.test(text.replaceAll(/https?:\/\/\S+/g, ''))) return unreadable(given);
  if (heard.mentions.length > 0) return undefined;
  if (says(heard, ...FOREIGN)) return foreign;
  if (!isShort(text)) return undefined;
  if (THANKS.test(text)) {
    return answer({ headline: 'You are welcome. Ask again whenever something about the tank is not clear.' });
  }
  if (NODS.test(text)) {
    return answer({
      headline: 'All right. Whenever you like, type a reading or what you see in the tank.',
      next: [READINGS, ...TROUBLE],
    });
  }
  if (STARTS.test(text)) return beginning();
  if (HOW_IS_IT.test(text)) return standing(context);
  return GREETS.test(text) || ABOUT_IT.test(text) ? hello() : undefined;
};

const foreign = answer({
  headline: 'I read only English so far. In trouble: /urgent. Something looks wrong: /triage.',
  steps: ['Numbers with units work in every language: "KH 7.2 -> 8.4, 280 L".'],
  next: TROUBLE,
});

/** Only signs, a link, or another script. */
function unreadable(given: string): Answer {
  if (/\p{L}/u.test(given) && !given.includes('://')) return foreign;
  return answer({
    headline: 'I can read words and numbers, but no pictures and no links.',
    steps: ['Say in a sentence what you see, or what the tests read: "hammer is shut, salinity 33 ppt".'],
    next: [...TROUBLE, READINGS],
  });
}

/** What is logged, judged; without a log, what to say. */
function standing(context: Parameters<Intent>[1]): Answer {
  const { keep } = context;
  const tank = keep?.tankInUse();
  if (tank !== undefined && keep !== undefined && keep.latest(tank.id).length > 0)
    return answerOf(checkupCommand, {}, context);
  return answer({
    headline: 'Tell me what it reads and what you see, and I say how it stands.',
    steps: [
      'Look first: do all pumps run, do fish breathe calmly and eat, are corals open?',
      'Then what you can measure: temperature and salinity, then alkalinity, nitrate and phosphate; in a young tank ammonia.',
      'Type it in one line: "25 C, salinity 34 ppt, alk 8, no3 10".',
    ],
    sources: ['practice'],
    next: [READINGS, ...TROUBLE],
  });
}
