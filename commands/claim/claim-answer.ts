import type { Claim, Verdict } from '../../core/claims/claim.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import type { AskedWater } from '../dose/asked.ts';
import { cardFor } from './card-for.ts';

const opening: Readonly<Record<Verdict, string>> = {
  right: 'Right',
  'roughly right': 'Roughly right',
  wrong: 'Wrong',
  depends: 'It depends',
};

/** A rule with its verdict, the right figure, the sum, and what it would do to this much water. */
export function claimAnswer(claim: Claim, water: AskedWater): Answer {
  const { kind, rule, verdict, figure, besides, working, following, example, sources } = claim;
  const { steps = [], dangers = [], cautions = [] } = claim;
  const card = cardFor(kind);
  return answer({
    headline: `${opening[verdict]}: ${figure}.`,
    read: [`the rule as: ${rule}`, ...(following === undefined ? [] : water.read)],
    facts: [
      ...(besides === undefined ? [] : [{ label: 'Besides', value: besides }]),
      ...(following === undefined ? [] : [{ label: 'In this water', value: following(water.volumeL).words }]),
      ...(example === undefined ? [] : [{ label: 'For example', value: example.words }]),
    ],
    steps,
    working,
    dangers,
    cautions,
    sources,
    next: card === undefined ? [] : [action(say('primer.card', { card }), 'primer', { card })],
  });
}
