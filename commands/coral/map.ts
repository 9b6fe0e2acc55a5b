import { z } from 'zod';
import { ruleWords } from '../../core/corals/rule-words.ts';
import { check } from '../../core/corals/check.ts';
import type { Finding, Scene } from '../../core/corals/scene.ts';
import { troublesOf, type Trouble } from '../../core/picture/tank-map-shown.ts';
import type { LengthUnit } from '../../core/quantity/chosen-units.ts';
import { tankMap } from '../../core/picture/tank-map.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type Fact, type TextFile } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { countWords, problemsIn } from './finding-words.ts';
import { peopleCautions, peopleDangers } from './people-dangers.ts';
import { sceneOf, sceneWords } from './scene-of.ts';
import { guessedCautions } from './spot-said.ts';
import { unitsOf } from '../units-of.ts';
import { tankInput, tankOption } from './tank-input.ts';

/** Longer lists of what to move or watch, in characters, come as a file too. */
const MOST_TOLD = 2000;

export const mapCoralsCommand = defineCommand({
  path: ['coral', 'map'],
  summary: 'Pictures of your tank, from above and from the front: corals, reach, growth, conflicts, light',
  example: '/coral map',
  private: true,
  options: z.strictObject({ tank: tankOption() }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    const length = unitsOf(context, tank).length ?? 'cm';
    return mapAnswer(
      { scene: sceneOf(keep, tank, context.nowMs), name: tank.name, length },
      tankInput(keep, tank),
    );
  },
});

interface Mapped {
  readonly scene: Scene;
  readonly name: string;
  readonly length: LengthUnit;
}

function mapAnswer({ scene, name, length }: Mapped, again: { readonly tank?: string }): Answer {
  const { corals } = scene;
  const findings = check(scene);
  const problems = problemsIn(findings);
  const facts = troublesOf(scene, findings).map(factOf);
  const isLong =
    facts.reduce((sum, { label, value }) => sum + label.length + value.length + 14, 0) > MOST_TOLD;
  return answer({
    headline:
      corals.length === 0
        ? say('coral.noneOnMap', { tank: name })
        : `${name} from above and from the front: ${countWords(scene, findings)}.`,
    read: [sceneWords(scene), ...(isLong ? ['all that is to move or to watch is in the file'] : [])],
    facts,
    isList: true,
    steps: stepsFor(scene, problems),
    dangers: peopleDangers(corals),
    cautions: [
      ...peopleCautions(corals),
      ...guessedCautions(scene),
      ...(corals.some(({ rough }) => rough) ? [ROUGH] : []),
      ...(corals.length === 0 ? [] : [DRAWN]),
    ],
    sources: ['practice', 'memory'],
    pictures: tankMap(scene, findings, name, length),
    ...(isLong ? { file: fileOf(problems) } : {}),
    next: [
      ...(problems.length === 0 ? [] : [action(say('coral.checkThemAll'), 'coral check', again)]),
      ...(corals.length === 0 ? [] : [action(say('coral.myCorals'), 'coral list', again)]),
    ],
  });
}

const ROUGH =
  'A soft edge is a spot said in words: it can be off by a sixth of the tank. Give it in cm to be sure.';
const DRAWN =
  'Widths in a year are the high end of the guide, and reaches are those in still water: your own corals come first.';

function factOf({ corals, verdict, rules }: Trouble): Fact {
  return {
    label: corals.map(({ label }) => label).join(' and '),
    value: rules.map((rule) => ruleWords[rule]).join(', '),
    verdict,
  };
}

function stepsFor({ corals, light }: Scene, problems: readonly Finding[]): readonly string[] {
  if (corals.length === 0) return [say('coral.placeOne')];
  return [
    ...(problems.length === 0 ? [] : [say('coral.seeCures')]),
    ...(light.length === 0 ? [say('coral.addLightReadings')] : []),
  ];
}

function fileOf(problems: readonly Finding[]): TextFile {
  const lines = problems.map(
    ({ verdict, rule, reason, cure }) =>
      `${verdict} (${ruleWords[rule]}): ${reason}${cure === undefined ? '' : ` ${cure}`}`,
  );
  return { name: 'to-move-or-watch.txt', text: `${lines.join('\n')}\n` };
}
