import { urgentCard, type UrgentId } from '../../../core/care/urgent/cards.ts';
import { framesOf, type Frame } from '../../../core/language/frame.ts';
import { met, type Met } from '../../../core/language/met.ts';
import { answer, type Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { shortLimits } from '../../short/limits.ts';
import { urgentAction } from '../../urgent/action.ts';
import { particularOf } from '../../primer/particular.ts';
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

/** From this share of what is not the rule a kind is what the rule is about. Own choice. */
const CLEAR_SHARE = 0.35;

/** What is known of the subject of a rule that nothing judges; undefined where that is not clear. */
export function subjectOf(frame: Frame, context: OwnContext): Answer | undefined {
  const found = ofPoison(frame) ?? nextLikeliest(frame, context);
  if (found === undefined) return undefined;
  const headline = `I do not know that rule. On its subject: ${found.headline}`;
  if (headline.length <= shortLimits.headline) return { ...found, headline };
  const fact = { label: 'on its subject', value: found.headline };
  return {
    ...found,
    headline: 'I do not know that rule. On its subject: what stands below.',
    facts: [fact, ...found.facts],
  };
}

function ofPoison({ reading: { scanned } }: Frame): Answer | undefined {
  const poison = POISONS.find(([, classes]) => met(scanned, ...classes));
  return poison === undefined ? undefined : ofEmergency(poison[0]);
}

function ofEmergency(id: UrgentId): Answer {
  const { label, steps, never, stop, sources } = urgentCard(id);
  return answer({
    headline: `${label}: an emergency, act the same day.`,
    tone: 'urgent',
    steps,
    dangers: never,
    cautions: [`Stop and ask: ${stop}`],
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
