import type { CoralEntry } from '../../core/corals/entry.ts';
import type { Found } from '../../core/care/symptoms/rank.ts';
import { symptomCard, type SymptomId } from '../../core/care/symptoms/cards.ts';
import { say } from '../../core/wording/say.ts';
import type { Answer, NextAction } from '../answer.ts';
import { palytoxinCautions } from '../coral/palytoxin-cautions.ts';
import { typed } from '../called.ts';
import type { OwnContext } from '../command.ts';
import { filledVolume } from '../fill.ts';
import { triageCommand } from '../triage.ts';
import { ANSWERS, nextQuestion, questionActions, wholeAnswer, type Triage } from './card-answer.ts';
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
    ...answeredBy(id, signs),
    kept: {},
    evidence: { ...ofTank, found: [...signs, ...ofTank.found] },
    volume: look.volume ?? volumeInUse(context),
  };
  const card = wholeAnswer(triage);
  const asked = nextQuestion(triage);
  const narrowing = asked === undefined ? [] : [{ label: say('triage.narrowDown'), value: asked.ask }];
  return {
    ...card,
    echo: typed(triageCommand, { seen: id }),
    read: [...card.read, ...(water?.read ?? [])],
    unused: [...card.unused, ...(water?.unused ?? [])],
    facts: [...card.facts.slice(0, 2), ...narrowing, ...card.facts.slice(2), ...(water?.facts ?? [])],
    steps: [...card.steps, ...(water?.steps ?? [])],
    dangers: withPalytoxin(palytoxinCautions(entries), [...card.dangers, ...(water?.dangers ?? [])]),
    sources: [...new Set([...card.sources, ...(water?.sources ?? [])])],
    next: [...questionActions(triage), ...others.slice(0, 2).map(orRather), ...card.next],
  };
}

/** The first question of the card, where what was said answers it. */
function answeredBy(id: SymptomId, said: readonly Found[]): Pick<Triage, 'answers' | 'typed'> {
  const [key, choice] =
    Object.entries(symptomCard(id).questions[0]?.choices ?? {}).find(([, { signs }]) =>
      said.some(({ sign }) => signs?.includes(sign)),
    ) ?? [];
  return key === undefined ? { answers: [], typed: {} } : { answers: [choice], typed: { [ANSWERS[0]]: key } };
}

/** With the name of the coral once, and not a second time without it. */
function withPalytoxin(named: readonly string[], own: readonly string[]): readonly string[] {
  return [...named, ...own.filter((text) => !named.some((one) => one.includes(text)))];
}

function orRather(id: SymptomId): NextAction {
  return { ...symptomAction(id, {}), label: say('triage.orRather', { sign: symptomCard(id).label }) };
}

function volumeInUse({ keep }: OwnContext): string | undefined {
  const tank = keep?.tankInUse();
  return tank === undefined ? undefined : filledVolume(tank);
}
