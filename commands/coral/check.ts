import { z } from 'zod';
import { check } from '../../core/corals/check.ts';
import { fewestMoves, type Mover } from '../../core/corals/fewest-moves.ts';
import type { Finding, Scene } from '../../core/corals/scene.ts';
import { fittingOf } from '../../core/corals/say.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type Fact, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { shortLimits } from '../short/limits.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { askedPlaced, nameOf, placedOption } from './asked-placed.ts';
import {
  basisLines,
  countWords,
  curesOf,
  factOf,
  isTold,
  labelsOf,
  problemsIn,
  reasonLines,
  worstOf,
  type LabelOf,
} from './finding-words.ts';
import { peopleCautions, peopleDangers } from './people-dangers.ts';
import { placementAnswer } from './placement-answer.ts';
import { sceneOf, sceneWords } from './scene-of.ts';
import { guessedCautions } from './spot-said.ts';
import { FACT_LETTERS } from './short-first.ts';
import { tankInput, tankOption } from './tank-input.ts';

/** So many findings are told of a whole tank, and so many changes. */
const MOST_TOLD = 12;
const MOST_STEPS = 6;
const MOST_MOVERS = 3;

export const checkCoralsCommand = defineCommand({
  path: ['coral', 'check'],
  summary: 'Check where your corals stand: the whole tank, or one of them with better spots',
  example: '/coral check',
  private: true,
  options: z.strictObject({ coral: placedOption().optional(), tank: tankOption() }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    const scene = sceneOf(keep, tank, context.nowMs);
    const again = tankInput(keep, tank);
    if (input.coral !== undefined) {
      const placing = askedPlaced(keep, tank, input.coral);
      return placementAnswer(scene, placing.id, {
        headline: `${nameOf(placing)} (coral ${placing.id} of ${tank.name})`,
        read: [],
        tankInput: again,
      });
    }
    return wholeTank(scene, tank.name, again);
  },
});

function wholeTank(scene: Scene, name: string, again: { readonly tank?: string }): Answer {
  const { corals } = scene;
  if (corals.length === 0) {
    return answer({
      headline: say('coral.noneToCheck', { tank: name }),
      steps: [say('coral.placeOne')],
    });
  }
  const findings = check(scene);
  const problems = problemsIn(findings);
  const label = labelsOf(scene);
  const movers = fewestMoves(findings);
  return answer({
    headline: `${name}: ${countWords(scene, findings)}.`,
    read: [sceneWords(scene)],
    facts: [
      ...problems.slice(0, MOST_TOLD).map(factOf),
      ...(problems.length > MOST_TOLD
        ? [{ label: 'and', value: `${problems.length - MOST_TOLD} more to watch: check single corals` }]
        : []),
      ...settledFact(scene, findings),
    ],
    isList: true,
    steps: [...fewestStep(movers, label), ...curesOf(findings, label).slice(0, MOST_STEPS)],
    working: [...reasonLines(problems.slice(0, MOST_TOLD)), ...basisLines(problems)],
    dangers: peopleDangers(corals),
    cautions: [
      ...peopleCautions(corals),
      ...guessedCautions(scene),
      ...findings.filter(isTold).map(({ reason }) => reason),
    ],
    sources: ['practice', 'memory'],
    next: [
      ...movers.slice(0, MOST_MOVERS).map(({ id }): NextAction =>
        action(say('coral.betterSpots', { coral: label(id) }), 'coral check', {
          coral: String(id),
          ...again,
        }),
      ),
      action(say('coral.mapOfTank'), 'coral map', again),
      action(say('coral.myCorals'), 'coral list', again),
    ],
  });
}

const CALM = 'no rule objects to';

function settledFact({ corals }: Scene, findings: readonly Finding[]): readonly Fact[] {
  const calm = corals.filter(({ id }) => worstOf(id, findings) === 'settled');
  if (calm.length === 0) return [];
  return [
    {
      label: CALM,
      value: fittingOf(
        calm.map(({ label }) => label),
        FACT_LETTERS - CALM.length - 2,
      ),
      verdict: 'settled',
    },
  ];
}

const FEWEST = 'Begin with the fewest moves:';

/** Which few corals to move, where one of them is the cause of several findings. */
function fewestStep(movers: readonly Mover[], labelOf: LabelOf): readonly string[] {
  const [first] = movers;
  if (first === undefined || first.cures < 2) return [];
  const named = movers.slice(0, MOST_MOVERS).map(({ id, cures }) => `${labelOf(id)} (part of ${cures})`);
  return [`${FEWEST} ${fittingOf(named, shortLimits.step - FEWEST.length - 2)}.`];
}
