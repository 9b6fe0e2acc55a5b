import { urgentCard, type UrgentId } from '../../../core/care/urgent/cards.ts';
import { subjectCard } from '../../../core/care/subjects/cards.ts';
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

/** Rows that know something of a coral that is named. */
const OF_CORALS = [...coralPairRows, ...coralLightRows, ...coralGrowRows, ...coralAboutRows];

/** Poisons that an emergency tells of. */
const POISONS: readonly (readonly [UrgentId, readonly Met[]])[] = [
  ['metal in the water', ['poisons.coin', 'poisons.battery', 'poisons.rust']],
  ['bleach or spray', ['poisons.bleach', 'poisons.soap', 'poisons.insecticide']],
];

/** Kinds beside the rule that are looked at, likeliest first. */
const MOST_KINDS = 3;

/**
 * What is known of the subject of a rule that nothing here judges: of a poison that is named, else of what the message is
 * next likeliest about. Undefined where that is not clear either.
 */
export function subjectOf(frame: Frame, context: OwnContext): Answer | undefined {
  const found = ofPoison(frame) ?? nextLikeliest(frame, context);
  return (
    found && {
      ...found,
      headline: `I do not know that rule, so whether it is right was not judged. What is known of its subject: ${found.headline}`,
    }
  );
}

function ofPoison({ reading: { scanned } }: Frame): Answer | undefined {
  if (met(scanned, 'corals.zoanthid', 'corals.palythoa') && met(scanned, ...HARM)) {
    const card = subjectCard('handling', 'palytoxin facts');
    return card === undefined ? undefined : subjectAnswer(card);
  }
  const poison = POISONS.find(([, classes]) => met(scanned, ...classes));
  return poison === undefined ? undefined : ofEmergency(poison[0]);
}

/** Words of harm to whoever touches it. */
const HARM: readonly Met[] = ['manner.toxic', 'manner.lethal', 'manner.askOk', 'body.hand', 'places.near'];

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
  for (const other of others.slice(0, MOST_KINDS)) {
    const row = other.slots.corals === undefined ? undefined : rowOfCoral(other);
    const found = particularOf(other) ?? row?.answer(other, context);
    // What only asks back knows nothing of it yet.
    if (found !== undefined || row !== undefined) return found?.facts.length === 0 ? undefined : found;
  }
  return undefined;
}

function rowOfCoral(frame: Frame): Row | undefined {
  return OF_CORALS.find(({ kind }) => kind === frame.kind);
}
