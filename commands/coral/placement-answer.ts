import { ruleWords } from '../../core/corals/rule-words.ts';
import { checkOne, coralIn } from '../../core/corals/check.ts';
import { propose, type Proposals } from '../../core/corals/propose.ts';
import type { Finding, Scene } from '../../core/corals/scene.ts';
import { fewOf } from '../../core/corals/say.ts';
import { firstSentence } from '../../core/words/sentence.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type Fact, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import {
  basisLines,
  curesOf,
  factOf,
  isTold,
  labelsOf,
  problemsIn,
  reasonLines,
  verdictOf,
} from './finding-words.ts';
import { peopleDangers } from './people-dangers.ts';
import { guessedCautions, spotSaid, spotShort } from './spot-said.ts';

/** What was done before the check, in the words of the headline ("Torch coral is coral 3 of Pantry"). */
interface Done {
  readonly headline: string;
  readonly read: readonly string[];
  /** Options that name the tank in a next command; empty for the one in use. */
  readonly tankInput: { readonly tank?: string };
}

/** So many findings stand before the better spots. */
const FIRST = 2;

/** The placement check of one coral of the scene, with better spots where it is not settled. */
export function placementAnswer(scene: Scene, id: number, done: Done): Answer {
  const coral = coralIn(scene, id);
  const findings = checkOne(scene, id);
  const labelOf = labelsOf(scene);
  const verdict = verdictOf(findings);
  const better = verdict === 'settled' ? undefined : propose(scene, id);
  const judged = findings.filter((one) => one.rule !== 'people' && !isTold(one));
  const facts = judged.map((one) => withoutName(factOf(one), coral.label));
  return answer({
    headline: `${done.headline}: ${headWords(findings)}.`,
    read: [...done.read, `at: ${spotSaid(coral, scene.box)}`],
    facts: [
      ...facts.slice(0, FIRST),
      ...(better === undefined ? [] : betterFacts(better)),
      ...facts.slice(FIRST),
    ],
    steps: [...curesOf(findings, labelOf), ...(better === undefined ? [] : betterSteps(better))],
    working: [
      ...reasonLines(judged),
      ...(better === undefined ? [] : whyLines(better)),
      ...basisLines(findings),
    ],
    dangers: peopleDangers([coral]),
    cautions: [
      ...guessedCautions(scene),
      ...findings.filter(isTold).map(({ reason }) => reason),
      ...(verdict === 'settled' ? [NOT_SURE] : []),
    ],
    next: [
      ...(better?.spots ?? []).map(({ spot }, index): NextAction =>
        action(say('coral.moveToBetter', { number: String(index + 1) }), 'coral move', {
          coral: String(id),
          at: spotShort(spot),
          ...done.tankInput,
        }),
      ),
      action(say('coral.mapOfTank'), 'coral map', done.tankInput),
      action(say('coral.myCorals'), 'coral list', done.tankInput),
    ],
  });
}

const NOT_SURE =
  'Settled means that no rule here objects, not that nothing can happen: look at it in the first nights with a dim torch.';

/** So many rules stand in the headline. */
const MOST_RULES = 3;

/** "settled", or the verdict and the rules that give it: "move (sting, light)". */
function headWords(findings: readonly Finding[]): string {
  const verdict = verdictOf(findings);
  if (verdict === 'settled') return verdict;
  const rules = problemsIn(findings).filter((one) => one.verdict === verdict);
  return `${verdict} (${fewOf([...new Set(rules.map(({ rule }) => ruleWords[rule]))], MOST_RULES)})`;
}

function betterFacts({ spots }: Proposals): readonly Fact[] {
  return spots.map(({ words }, index) => ({ label: `better spot ${index + 1}`, value: words }));
}

function whyLines({ spots, obstacle }: Proposals): readonly string[] {
  return [
    ...spots.map(({ why }, index) => `better spot ${index + 1}: ${why}`),
    ...(obstacle === undefined ? [] : [`no better spot: ${obstacle.reason}`]),
  ];
}

/** The coral itself stands in the headline. */
function withoutName(fact: Fact, label: string): Fact {
  const name = `${label}: `;
  return fact.value.startsWith(name) ? { ...fact, value: fact.value.slice(name.length) } : fact;
}

function betterSteps({ spots, obstacle, doubt }: Proposals): readonly string[] {
  if (spots.length > 0) return [doubt];
  return [
    obstacle === undefined
      ? 'I found no spot in this tank with less to say against it.'
      : `No better spot in this tank: ${firstSentence(obstacle.reason)}`,
  ];
}
