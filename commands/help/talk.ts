import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { checkupCommand } from '../checkup.ts';
import type { OwnContext } from '../command.ts';
import { answerOf } from '../defaults.ts';
import { openCard } from '../primer/card-answer.ts';
import { personAction } from '../urgent/hurt.ts';

function trouble(): readonly NextAction[] {
  return [action(say('triage.looksWrong'), 'triage', {}), action(say('urgent.itIsUrgent'), 'urgent', {})];
}

function readings(): NextAction {
  return action(say('checkup.checkMyReadings'), 'checkup', {}, ['readings']);
}

/** Thanks. */
export function welcome(): Answer {
  return answer({ headline: say('help.welcome') });
}

/** What went well, or was no trouble. */
export function goodNews(): Answer {
  return answer({ headline: say('help.goodToHear'), next: [readings(), ...trouble()] });
}

/** A nod, or a farewell. */
export function allRight(): Answer {
  return answer({ headline: say('help.allRight'), next: [readings(), ...trouble()] });
}

/** Who is asked, and for what. */
export function hello(): Answer {
  return answer({
    headline: say('help.hello'),
    steps: [say('help.sayReads'), say('help.saySees'), say('help.sayWonders'), say('help.helpShowsAll')],
    next: [action(say('help.startingATank'), 'primer', { card: 'cycle' }), readings(), ...trouble()],
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
    headline: say('help.reefTanksOnly'),
    next: [personAction(), ...trouble(), readings()],
  });
}

export function foreign(): Answer {
  return answer({
    headline: say('help.readsEnglish'),
    steps: [say('help.numbersWork')],
    next: trouble(),
  });
}

/** Only signs, a link, or another script; undefined where there is something to read. */
export function unreadable(given: string): Answer | undefined {
  if (/[a-z0-9]/i.test(given.replaceAll(/https?:\/\/\S+/gi, ''))) return undefined;
  if (/\p{L}/u.test(given) && !given.includes('://')) return foreign();
  return answer({
    headline: say('help.noPictures'),
    steps: [say('help.sayInASentence')],
    next: [...trouble(), readings()],
  });
}

/** What is logged, judged; without a log, what to say. */
export function standing(context: OwnContext): Answer {
  const { keep } = context;
  const tank = keep?.tankInUse();
  if (tank !== undefined && keep !== undefined && keep.latest(tank.id).length > 0)
    return answerOf(checkupCommand, {}, context);
  return answer({
    headline: say('help.tellMe'),
    steps: [
      'Look first: do all pumps run, do fish breathe calmly and eat, are corals open?',
      'Then measure: temperature, salinity, alkalinity, nitrate, phosphate; in a young tank ammonia.',
      'Type it in one line: "25 C, salinity 34 ppt, alk 8, no3 10".',
    ],
    sources: ['practice'],
    next: [readings(), ...trouble()],
  });
}
