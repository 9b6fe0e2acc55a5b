import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { checkupCommand } from '../checkup.ts';
import type { OwnContext } from '../command.ts';
import { answerOf } from '../defaults.ts';
import { openCard } from '../primer/card-answer.ts';
import { personAction } from '../urgent/hurt.ts';

const TROUBLE: readonly NextAction[] = [
  action(say('triage.looksWrong'), 'triage', {}),
  action(say('urgent.itIsUrgent'), 'urgent', {}),
];
const READINGS: NextAction = action(say('checkup.checkMyReadings'), 'checkup', {}, ['readings']);

/** Thanks. */
export const welcome = answer({
  headline: 'You are welcome. Ask again whenever something about the tank is not clear.',
});

/** What went well, or was no trouble. */
export const goodNews = answer({
  headline: 'Good to hear. Whenever you like, type a reading or what you see in the tank.',
  next: [READINGS, ...TROUBLE],
});

/** A nod, or a farewell. */
export const allRight = answer({
  headline: 'All right. Whenever you like, type a reading or what you see in the tank.',
  next: [READINGS, ...TROUBLE],
});

/** Who is asked, and for what. */
export function hello(): Answer {
  return answer({
    headline: 'Hello! I am a bot: tell me about your reef tank in your own words, and I say what to do next.',
    steps: [
      'What it reads: "alk 8, calcium 420, salinity 35 ppt, 25 C". I say whether that is fine.',
      'What you see: "my torch is closed". In trouble: /urgent.',
      'What you wonder: "what is limewater", "what should my salinity be", "can a torch sit next to a hammer".',
      '/help shows all I can do.',
    ],
    next: [action(say('help.startingATank'), 'primer', { card: 'cycle' }), READINGS, ...TROUBLE],
  });
}

/** Somebody wants to begin. */
export function beginning(): Answer {
  return answer({
    headline:
      'Welcome! Slowly is the quickest way: salt water first, then weeks of cycling, then one hardy animal.',
    steps: [
      'Read the short cards below, in this order.',
      'Mix salt water with RO water, and check the salinity with an instrument you have checked.',
      'Let the tank cycle until ammonia and nitrite both read none and stay there, often three to six weeks.',
      'Then a few snails, then one hardy coral or fish, and two weeks of watching before the next.',
      'Keep the tank here with /tank new: after that I work with your litres.',
    ],
    dangers: [
      'Mains and water first: every plug behind a ground-fault switch, every cable with a drip loop.',
    ],
    cautions: ['Times are common practice: keepers differ.'],
    sources: ['practice'],
    next: ['water and mains', 'mixing salt water', 'cycle', 'first corals'].map(openCard),
  });
}

/** Somebody asks what to add when. */
export function firstAnimals(): Answer {
  return {
    ...beginning(),
    headline:
      'First the cycle, until ammonia and nitrite both read none; then a few snails, then one hardy coral or fish.',
    steps: ['Two weeks of watching before the next.', 'Read the short cards below, in this order.'],
  };
}

/** Not about a reef tank, as far as can be told. */
export function notMine(): Answer {
  return answer({
    headline: 'I know reef tanks and nothing else. If it is about yours: say what it reads or what you see.',
    next: [personAction, ...TROUBLE, READINGS],
  });
}

export const foreign = answer({
  headline: 'I read only English so far. In trouble: /urgent. Something looks wrong: /triage.',
  steps: ['Numbers with units work in every language: "KH 7.2 -> 8.4, 280 L".'],
  next: TROUBLE,
});

/** Only signs, a link, or another script; undefined where there is something to read. */
export function unreadable(given: string): Answer | undefined {
  if (/[a-z0-9]/i.test(given.replaceAll(/https?:\/\/\S+/gi, ''))) return undefined;
  if (/\p{L}/u.test(given) && !given.includes('://')) return foreign;
  return answer({
    headline: 'I can read words and numbers, but no pictures and no links.',
    steps: ['Say in a sentence what you see, or what the tests read: "hammer is shut, salinity 33 ppt".'],
    next: [...TROUBLE, READINGS],
  });
}

/** What is logged, judged; without a log, what to say. */
export function standing(context: OwnContext): Answer {
  const { keep } = context;
  const tank = keep?.tankInUse();
  if (tank !== undefined && keep !== undefined && keep.latest(tank.id).length > 0)
    return answerOf(checkupCommand, {}, context);
  return answer({
    headline: 'Tell me what it reads and what you see, and I say how it stands.',
    steps: [
      'Look first: do all pumps run, do fish breathe calmly and eat, are corals open?',
      'Then measure: temperature, salinity, alkalinity, nitrate, phosphate; in a young tank ammonia.',
      'Type it in one line: "25 C, salinity 34 ppt, alk 8, no3 10".',
    ],
    sources: ['practice'],
    next: [READINGS, ...TROUBLE],
  });
}
