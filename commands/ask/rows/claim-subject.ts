import { urgentCard, type UrgentId } from '../../../core/care/urgent/cards.ts';
import { askedIn, pointsAsked } from '../../../core/care/subjects/points-asked.ts';
import type { SubjectCard } from '../../../core/care/subjects/subject-card.ts';
import { framesOf, type Frame } from '../../../core/language/frame.ts';
import { met, type Met } from '../../../core/language/met.ts';
import { answer, type Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { subjectAnswer } from '../../primer/subject-answer.ts';
import { urgentAction } from '../../urgent/action.ts';
import { particularOf } from '../particular.ts';
import type { Row } from '../row.ts';
import { coralAboutRows } from './coral-about.ts';
import { coralGrowRows } from './coral-grow.ts';
import { coralLightRows } from './coral-light.ts';
import { coralPairRows } from './coral-pair.ts';
import { judgedByHearsay, nearHearsay } from './hearsay-of.ts';

/** Rows that know something of a coral that is named. */
const OF_CORALS = [...coralPairRows, ...coralLightRows, ...coralGrowRows, ...coralAboutRows];

/** Poisons that an emergency tells of. */
const POISONS: readonly (readonly [UrgentId, readonly Met[]])[] = [
  ['metal in the water', ['poisons.coin', 'poisons.battery', 'poisons.rust']],
  ['bleach or spray', ['poisons.bleach', 'poisons.soap', 'poisons.insecticide']],
];

/** From this share of what is not the rule a kind is what the rule is about. Own choice. */
const CLEAR_SHARE = 0.35;

/**
 * What is known of a rule that no sum judges: the verdict on what is often passed on, with that on a second one beside it;
 * else, with no verdict, what is known of its subject. Undefined where that is not clear either.
 */
export function subjectOf(frame: Frame, context: OwnContext): Answer | undefined {
  const [verdict, other] = judgedByHearsay(frame);
  if (verdict !== undefined) {
    const { slots, reading } = frame;
    const points = pointsAsked(verdict, askedIn(reading.scanned.text, slots.corals ?? []));
    const given = subjectAnswer({ ...verdict, points: [...points] });
    const also = other === undefined ? [] : [{ label: ruleOf(other), value: other.headline }];
    const read = [
      `judged: ${ruleOf(verdict)}${other === undefined ? '' : `; ${ruleOf(other)}`}; nothing else of the message`,
    ];
    return { ...given, read, facts: [...also, ...given.facts] };
  }
  const near = nearHearsay(frame.reading.scanned);
  const found = ofPoison(frame) ?? (near && subjectAnswer(near)) ?? nextLikeliest(frame, context);
  return found && { ...found, headline: `I do not know that rule. On its subject: ${found.headline}` };
}

function ruleOf({ title }: SubjectCard): string {
  return title.replace(/^Rule: /, '');
}

function ofPoison({ reading: { scanned } }: Frame): Answer | undefined {
  const poison = POISONS.find(([, classes]) => met(scanned, ...classes));
  return poison === undefined ? undefined : ofEmergency(poison[0]);
}

function ofEmergency(id: UrgentId): Answer {
  const { label, steps, never, stop, sources } = urgentCard(id);
  return answer({
    headline: `${label} counts as an emergency: act the same day, and do not wait to see.`,
    facts: [{ label: 'When to ask', value: stop }],
    steps,
    cautions: never,
    sources,
    next: [urgentAction(id)],
  });
}

function nextLikeliest({ reading }: Frame, context: OwnContext): Answer | undefined {
  const others = framesOf(reading).filter(({ kind }) => kind !== 'claim');
  const sum = others.reduce((all, { probability }) => all + probability, 0);
  const [other] = others;
  if (other === undefined || other.probability < CLEAR_SHARE * sum) return undefined;
  const row = other.slots.corals === undefined ? undefined : rowOfCoral(other);
  const found = particularOf(other) ?? row?.answer(other, context);
  // What only asks back knows nothing of it yet.
  return found?.facts.length === 0 ? undefined : found;
}

function rowOfCoral(frame: Frame): Row | undefined {
  return OF_CORALS.find(({ kind }) => kind === frame.kind);
}
