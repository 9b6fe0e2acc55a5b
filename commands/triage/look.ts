import type { CoralEntry } from '../../core/corals/entry.ts';
import type { Found } from '../../core/care/symptoms/rank.ts';
import { symptomCard, type SymptomId } from '../../core/care/symptoms/cards.ts';
import type { Answer, NextAction } from '../answer.ts';
import { palytoxinCautions } from '../coral/palytoxin-cautions.ts';
import { typed } from '../called.ts';
import type { OwnContext } from '../command.ts';
import { filledVolume } from '../fill.ts';
import { triageCommand } from '../triage.ts';
import { nextQuestion, questionActions, wholeAnswer } from './card-answer.ts';
import { evidenceOf } from './evidence.ts';
import { symptomAction } from './menu.ts';

/** What was said beside something that looks wrong. */
export interface Look {
  readonly id: SymptomId;
  /** What else it may be, likeliest first. */
  readonly others: readonly SymptomId[];
  /** Corals that were named. */
  readonly entries: readonly CoralEntry[];
  readonly volume: string | undefined;
  /** Readings that were said, judged, and what they are signs of. */
  readonly water: Answer | undefined;
  readonly signs: readonly Found[];
}

/** Something looks wrong: the card at once, with buttons for what would narrow it. */
export function lookAnswer(look: Look, context: OwnContext): Answer {
  const { id, others, entries, water, signs } = look;
  const ofTank = evidenceOf(context);
  const triage = {
    id,
    answers: [],
    typed: {},
    kept: {},
    evidence: { ...ofTank, found: [...signs, ...ofTank.found] },
    volume: look.volume ?? volumeInUse(context),
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
    cautions: [...palytoxinCautions(entries), ...card.cautions],
    sources: [...new Set([...card.sources, ...(water?.sources ?? [])])],
    next: [...questionActions(triage), ...others.slice(0, 2).map(orRather), ...card.next],
  };
}

function orRather(id: SymptomId): NextAction {
  return { ...symptomAction(id, {}), label: `Or rather: ${symptomCard(id).label}` };
}

function volumeInUse({ keep }: OwnContext): string | undefined {
  const tank = keep?.tankInUse();
  return tank === undefined ? undefined : filledVolume(tank);
}
