import { symptomCard, type SymptomId } from '../../core/care/symptoms/cards.ts';
import { symptomsIn } from '../../core/care/symptoms/find.ts';
import { coralsIn } from '../../core/words/corals.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import type { Answer } from '../answer.ts';
import { triageCommand } from '../triage.ts';
import { nextQuestion, questionActions, wholeAnswer } from '../triage/card-answer.ts';
import { evidenceOf } from '../triage/evidence.ts';
import { symptomAction } from '../triage/menu.ts';
import { typed } from './call.ts';
import { signsOfFacts, waterSaid } from './care/said-water.ts';
import { palytoxinCautions } from '../coral/palytoxin-cautions.ts';
import { cycleIntent } from './care/cycle.ts';
import { filledVolume } from '../fill.ts';
import type { Intent } from './intent.ts';

/** Something looks wrong: the card at once, with buttons for what would narrow it. */
const lookIntent: Intent = (heard, context) => {
  if (heard.said.some(({ role }) => role === 'goal' || role === 'step' || role === 'use')) return undefined;
  const [id, ...others] = symptomsIn(heard.text);
  if (id === undefined) return undefined;
  const water = waterSaid(heard, context);
  const ofTank = evidenceOf(context);
  const triage = {
    id,
    answers: [],
    typed: {},
    kept: {},
    evidence: { ...ofTank, found: [...signsOfFacts(water?.facts ?? []), ...ofTank.found] },
    volume: tankVolume(heard)?.text ?? volumeInUse(context),
  };
  const card = wholeAnswer(triage);
  const asked = nextQuestion(triage);
  return {
    ...card,
    read: [`your question as ${typed(triageCommand, { seen: id })}`, ...card.read, ...(water?.read ?? [])],
    facts: [...card.facts, ...(water?.facts ?? [])],
    steps: [
      ...card.steps,
      ...(water?.steps ?? []),
      ...(asked === undefined ? [] : [`To narrow it down, choose below. ${asked.ask}`]),
    ],
    cautions: [
      ...palytoxinCautions(coralsIn(heard.text).flatMap(({ entries }) => entries)),
      ...card.cautions,
    ],
    sources: [...new Set([...card.sources, ...(water?.sources ?? [])])],
    next: [...questionActions(triage), ...others.slice(0, 2).map(orRather), ...card.next],
  };
};

function orRather(id: SymptomId): Answer['next'][number] {
  return { ...symptomAction(id, {}), label: `Or rather: ${symptomCard(id).label}` };
}

function volumeInUse({ keep }: Parameters<Intent>[1]): string | undefined {
  const tank = keep?.tankInUse();
  return tank === undefined ? undefined : filledVolume(tank);
}

/** A log of a cycle first: its numbers are no illness. */
export const symptomIntents: readonly Intent[] = [cycleIntent, lookIntent];
