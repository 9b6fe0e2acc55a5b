import { type Choice, type Question, MOST_QUESTIONS } from '../../core/care/symptoms/card.ts';
import { symptomCard, type SymptomId } from '../../core/care/symptoms/cards.ts';
import { rank, type Ranked } from '../../core/care/symptoms/rank.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type Fact, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { urgentAction } from '../urgent/action.ts';
import { hurtAction } from '../urgent/hurt.ts';
import { readOrName } from '../urgent/not-used.ts';
import { percent, readWater, type Water } from '../waterchange/pour.ts';
import { NOT_SURE } from './choice.ts';
import type { Evidence } from './evidence.ts';
import type { Kept } from './menu.ts';

/** The names of the options that hold the answers, in order. */
export const ANSWERS = ['one', 'two'] as const;

/** What is known of one symptom: the answers so far, undefined where the member is not sure. */
export interface Triage {
  readonly id: SymptomId;
  readonly answers: readonly (Choice | undefined)[];
  /** The answers as typed, for the next button. */
  readonly typed: Kept;
  readonly kept: Kept;
  readonly evidence: Evidence;
  readonly volume?: string | undefined;
}

/** The question that comes next; undefined when all are answered. */
export function nextQuestion({ id, answers }: Triage): Question | undefined {
  return symptomCard(id).questions.slice(0, MOST_QUESTIONS)[answers.length];
}

/** One question with its choices, below the first safe action that holds whatever the answer. */
export function questionAnswer(triage: Triage, { ask }: Question): Answer {
  const { id, evidence } = triage;
  return answer({
    headline: firstActions(triage)[0],
    tone: 'question',
    read: [`seen: ${symptomCard(id).label}`, ...evidence.read],
    unused: evidence.unused,
    facts: [{ label: say('triage.thenTellMe'), value: ask }, ...ranked(triage).slice(0, 2).map(causeFact)],
    dangers: evidence.hazards,
    sources: ['practice'],
    next: questionActions(triage),
  });
}

/** Buttons for the open question, and one that skips what is left. */
export function questionActions(triage: Triage): readonly NextAction[] {
  const { id, answers, typed, kept } = triage;
  const question = nextQuestion(triage);
  const name = ANSWERS[answers.length];
  if (question === undefined || name === undefined) return [];
  const said = (label: string, more: Kept): NextAction =>
    action(label, 'triage', { seen: id, ...typed, ...more, ...kept });
  const open = ANSWERS.slice(answers.length, symptomCard(id).questions.length);
  const skipped = Object.fromEntries(open.map((each) => [each, NOT_SURE]));
  return [
    ...Object.entries(question.choices).map(([key, { label }]) => said(label, { [name]: key })),
    said(say('triage.notSure'), { [name]: NOT_SURE }),
    ...(open.length > 1 ? [said(say('triage.skipQuestions'), skipped)] : []),
  ];
}

/** The whole card: causes in order with why, steps, what not to do, when to ask. */
export function wholeAnswer(triage: Triage): Answer {
  const { id, answers, evidence } = triage;
  const card = symptomCard(id);
  const [first, ...then] = firstActions(triage);
  const left: string[] = [];
  const water = readOrName('volume', triage.volume, readWater, left) ?? readWater(undefined);
  return answer({
    headline: first,
    read: [
      `seen: ${card.label}`,
      ...answers.flatMap((given, place) =>
        given === undefined ? [] : [`${card.questions[place]?.ask ?? ''} ${given.label}`],
      ),
      ...evidence.read,
    ],
    unused: [...left, ...evidence.unused],
    facts: [...ranked(triage).map(causeFact), ...changeFact(triage, water)],
    steps: [...then, ...card.steps],
    working: [
      ...ranked(triage).flatMap(reasonLine),
      'Causes stand in the order that is common practice, moved by your answers and your tank. None is certain from words.',
      ...(card.published ?? []),
    ],
    dangers: [...evidence.hazards, ...card.never],
    cautions: [`Stop and ask: ${card.stop}`],
    sources: card.sources,
    next: along(triage),
  });
}

function ranked({ id, answers, evidence }: Triage): readonly Ranked[] {
  const given = answers.filter((each) => each !== undefined);
  return rank(symptomCard(id), given, evidence.found);
}

/**
 * What comes first: what the answers put there, the last one foremost, then that of the cause something speaks for, else the
 * card's own, unless an answer replaces it.
 */
function firstActions(triage: Triage): readonly [string, ...string[]] {
  const { id, answers } = triage;
  const likeliest = ranked(triage).find(({ score }) => score > 0);
  const own = likeliest?.cause.first ?? symptomCard(id).first;
  const given = answers.filter((each) => each?.first !== undefined).toReversed();
  const firsts = given.flatMap((each) => each?.first ?? []);
  const [first, ...more] = given.some((each) => each?.replaces === true) ? firsts : [...firsts, own];
  return [first ?? own, ...more];
}

/** Most letters of a fact with its label. */
const FACT = 110;

/** What speaks for a cause in this tank, else what is true of it in general; all of it stands in the working. */
function causeFact({ cause, reasons }: Ranked, place: number): Fact {
  const label = `${place + 1}. ${cause.name}`;
  const [first = cause.why, ...more] = reasons;
  const value = more.reduce((text, reason) => {
    const longer = `${text}; ${reason}`;
    return label.length + longer.length > FACT ? text : longer;
  }, first);
  return { label, value };
}

function reasonLine({ cause: { name, why }, reasons }: Ranked): readonly string[] {
  return reasons.length === 0 ? [] : [`${name}: ${why} (${reasons.join('; ')})`];
}

function changeFact({ id }: Triage, { part }: Water): readonly Fact[] {
  const { change } = symptomCard(id);
  if (change === undefined) return [];
  const [low, high] = change;
  return [{ label: `a ${percent(low)} to ${percent(high)} change`, value: `${part(low)} to ${part(high)}` }];
}

function along({ id, kept, evidence }: Triage): readonly NextAction[] {
  const { urgent, hurt } = symptomCard(id);
  return [
    ...(hurt === undefined ? [] : [hurtAction(hurt)]),
    ...(urgent === undefined ? [] : [urgentAction(urgent)]),
    ...(evidence.hasTank ? [action(say('triage.waterStands'), 'checkup', {})] : []),
    ...(evidence.hasCorals ? [action(say('triage.coralsStand'), 'coral check', {})] : []),
    action(say('urgent.somethingElse'), 'triage', kept),
  ];
}
