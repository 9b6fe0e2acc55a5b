import type { Fact } from '../answer.ts';
import type { Plan } from '../reminder.ts';
import { occurrenceAfter, placeWords } from './progress.ts';
import { timeFact } from './times.ts';

/** The next three times of a plan, as long as it has them. */
export function firstTimes(plan: Plan, nowMs: number): readonly Fact[] {
  const facts: Fact[] = [];
  let afterMs: number | undefined = nowMs;
  for (const label of ['Next', 'Then', 'Then']) {
    afterMs = afterMs === undefined ? undefined : occurrenceAfter(plan, afterMs);
    if (afterMs !== undefined) facts.push(placed(timeFact(label, afterMs, plan.zone), plan, afterMs));
  }
  const { rule } = plan;
  if (rule.every !== 'after') return facts;
  return [
    ...facts,
    { label: 'Then', value: `${rule.days} ${rule.days === 1 ? 'day' : 'days'} after you say it is done` },
  ];
}

/** Which of how many, where they end: a dose split over days is counted. */
function placed(fact: Fact, plan: Plan, atMs: number): Fact {
  const place = placeWords(plan, atMs);
  return place === undefined ? fact : { ...fact, value: `${fact.value}, ${place}` };
}
