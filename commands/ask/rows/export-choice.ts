import { subjectCard } from '../../../core/care/subjects/cards.ts';
import { askedIn } from '../../../core/care/subjects/points-asked.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met, type Met } from '../../../core/language/met.ts';
import { readLogged } from '../../../core/log/value.ts';
import { limitsOf, sideOf } from '../../../core/water/limits.ts';
import { parameter } from '../../../core/water/parameter.ts';
import type { Answer } from '../../answer.ts';
import { askedAnswer } from '../../primer/subject-answer.ts';
import { attempt } from './attempt.ts';
import { levelsOf } from './levels-of.ts';

/** Ways to bring nutrients down, each by its words. */
const WAYS: readonly (readonly Met[])[] = [
  ['gear.refugium', 'animals.macroalgae'],
  ['gear.roller', 'gear.sock'],
  ['gear.skimmer'],
  ['substances.carbonSource'],
  ['substances.phosphateRemover'],
  ['deeds.changesWater'],
  ['deeds.feeds'],
];

/** The point for who feeds on as before. */
const FOOD_KEPT = 'Not feeding less';

/** Which of several ways, where nitrate or phosphate is high: the card that weighs them, behind what was read. */
export function exportChoice(frame: Frame): Answer | undefined {
  const { slots, reading } = frame;
  const { scanned } = reading;
  const high = (['nitrate', 'phosphate'] as const).flatMap((id) => {
    const text = levelsOf(slots, id, 'now').at(-1)?.text;
    const value = text === undefined ? undefined : attempt(() => readLogged(id, text, id).value);
    return value !== undefined && sideOf(value, limitsOf(id).usual) === 'high' ? [{ id, text }] : [];
  });
  const isChoice = scanned.tokens.some(({ word }) => word === 'or' || word === 'vs');
  if (high.length === 0 || !isChoice || WAYS.filter((way) => met(scanned, ...way)).length < 2)
    return undefined;
  const isFoodKept = met(scanned, 'manner.refusal') && met(scanned, 'deeds.feeds', 'substances.food');
  const isPhosphate = !isFoodKept && high.every(({ id }) => id === 'phosphate');
  const card = subjectCard('nutrients', isPhosphate ? 'phosphate high' : 'export choice');
  if (card === undefined) return undefined;
  const given = askedAnswer(card, askedIn(scanned.text, slots.corals ?? [], slots.volume), []);
  const read = high.map(({ id, text }) => `${parameter(id).label} ${text ?? ''} is high`);
  const kept = isFoodKept ? card.points.find(([label]) => label === FOOD_KEPT) : undefined;
  return {
    ...given,
    ...(kept === undefined ? {} : { headline: `${kept[0]}: ${kept[1]}.` }),
    read: [...given.read, ...read],
  };
}
