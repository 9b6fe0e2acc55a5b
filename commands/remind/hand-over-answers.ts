import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import type { Reading, Tank } from '../keep.ts';
import type { HandOver, Reminder } from '../reminder.ts';
import { reminderFacts, tankFacts, URGENT_STEPS } from './care-plan.ts';
import { timeFact } from './times.ts';
import { say } from '../../core/wording/say.ts';

export interface HandOverParts {
  readonly handOver: HandOver;
  readonly news: 'ask the sitter' | 'accepted' | 'declined' | 'ended';
  /** The tanks it is about, and their reminders. */
  readonly tanks: readonly Tank[];
  readonly reminders: readonly Reminder[];
  /** The newest reading of each parameter of a tank. */
  readonly latest: (tankId: number) => readonly Reading[];
  readonly nowMs: number;
  /** The owner's IANA zone. */
  readonly zone: string;
  readonly to: 'owner' | 'sitter';
}

/** The question to the sitter: whose tanks, how long, how much; of the tanks only their names before they accept. */
export function askSitterAnswer({ handOver, tanks, reminders, nowMs, zone }: HandOverParts): Answer {
  const input = { 'hand-over': String(handOver.id) };
  return answer({
    headline: 'A keeper asks you to look after their tank while they are away.',
    facts: [
      ownerFact(handOver),
      ...spanFacts(handOver, zone),
      { label: 'Tanks', value: tanks.map(({ name }) => name).join(', ') || 'none' },
      { label: 'Reminders', value: String(reminderFacts(reminders, nowMs).length) },
    ],
    steps: [
      'If you accept, you get a one-page care plan, and their reminders in that time come to you.',
      'They see that you did something, and when. You see nothing else of theirs, and can end it at any time.',
    ],
    next: [
      action(say('remind.accept'), 'remind sit', { ...input, answer: 'yes' }),
      action(say('remind.decline'), 'remind sit', { ...input, answer: 'no' }),
    ],
  });
}

/** One page for the sitter: the tanks, what is to be done with its amounts, and what to do first when it is urgent. */
export function carePlanAnswer(parts: HandOverParts): Answer {
  const { handOver, tanks, reminders, latest, nowMs, zone } = parts;
  const names = tanks.map(({ name }) => name).join(' and ') || 'the tank';
  return answer({
    headline: `Care plan for ${names}: you look after it in this time.`,
    read: ['Ask the owner before you do anything that is not on this page.'],
    facts: [
      ownerFact(handOver),
      ...spanFacts(handOver, zone),
      ...tanks.flatMap((tank) => tankFacts(tank, latest(tank.id), nowMs)),
      ...reminderFacts(reminders, nowMs, tanks),
    ],
    steps: URGENT_STEPS,
    isList: true,
    dangers: [
      'Touch no coral: some carry a strong poison (palytoxin). No hands in the water when you have a cut.',
      'A missed dose is never made up for by a double one. No medicine, and nothing new without the owner.',
    ],
    cautions: [
      'Wash your hands before and after. Doses are those of the reminders and no more.',
      'For a sick animal ask the owner and a vet who knows fish. No conditioner without the owner.',
    ],
    sources: ['practice'],
    next: [
      action(say('remind.iCanNotAfter'), 'remind sit', { 'hand-over': String(handOver.id), answer: 'no' }),
    ],
  });
}

/** What has become of a hand-over, for whoever is told. */
export function handOverNewsAnswer({ handOver, news, to, nowMs, reminders, zone }: HandOverParts): Answer {
  const facts = [to === 'owner' ? sitterFact(handOver) : ownerFact(handOver), ...spanFacts(handOver, zone)];
  if (to === 'sitter') {
    const headline = {
      'ask the sitter': 'A keeper asks you to look after their tank.',
      accepted: 'You look after the tank in this time.',
      declined: 'You do not look after the tank.',
      ended: 'The hand-over is over: the reminders go to their owner again. Thank you.',
    }[news];
    return answer({ headline, facts });
  }
  const headline = {
    'ask the sitter': 'Your sitter is asked. Until they accept, your reminders stay with you.',
    accepted: 'Your sitter has accepted, and has the care plan. In this time your reminders go to them.',
    declined: 'Your sitter has declined. Your reminders stay with you.',
    ended: 'The hand-over is over: your reminders come to you again.',
  }[news];
  const since = news === 'ended' ? doneFacts(handOver, reminders, nowMs, zone) : [];
  const list = [action(say('remind.myReminders'), 'remind list', {})];
  return answer({ headline, facts: [...facts, ...since], next: list });
}

function ownerFact({ ownerId }: HandOver): Fact {
  return { label: 'Owner', value: 'asks for this', personId: ownerId };
}

function sitterFact({ sitterId }: HandOver): Fact {
  return { label: 'Sitter', value: 'named by you', personId: sitterId };
}

function spanFacts({ fromMs, untilMs }: HandOver, zone: string): readonly Fact[] {
  return [timeFact('From', fromMs, zone), timeFact('Until', untilMs, zone)];
}

/** What was done in the time of the hand-over, each by its last time. */
function doneFacts(
  { fromMs, untilMs }: HandOver,
  reminders: readonly Reminder[],
  nowMs: number,
  zone: string,
): readonly Fact[] {
  return reminders.flatMap(({ text, lastDoneMs }) =>
    lastDoneMs === undefined || lastDoneMs < fromMs || lastDoneMs > Math.min(untilMs, nowMs)
      ? []
      : [timeFact(`Last done: ${text}`, lastDoneMs, zone)],
  );
}
