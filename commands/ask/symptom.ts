import { symptomsIn } from '../../core/care/symptoms/find.ts';
import { coralsIn } from '../../core/words/corals.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { lookAnswer } from '../triage/look.ts';
import { cycleIntent } from './care/cycle.ts';
import { signsOfFacts, waterSaid } from './care/said-water.ts';
import type { Intent } from './intent.ts';

/** Something looks wrong: the card at once, with buttons for what would narrow it. */
const lookIntent: Intent = (heard, context) => {
  if (heard.said.some(({ role }) => role === 'goal' || role === 'step' || role === 'use')) return undefined;
  const [id, ...others] = symptomsIn(heard.text);
  if (id === undefined) return undefined;
  const water = waterSaid(heard, context);
  return lookAnswer(
    {
      id,
      others,
      entries: coralsIn(heard.text).flatMap(({ entries }) => entries),
      volume: tankVolume(heard)?.text,
      water,
      signs: signsOfFacts(water?.facts ?? []),
    },
    context,
  );
};

/** A log of a cycle first: its numbers are no illness. */
export const symptomIntents: readonly Intent[] = [cycleIntent, lookIntent];
