import type { NamedCoral } from '../../core/corals/named.ts';
import { judgedLight } from '../../core/corals/light-verdict.ts';
import { fittingOf } from '../../core/corals/say.ts';
import { sentencesOf } from '../../core/words/sentence.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { fullNames } from './asked-kind.ts';
import { needOf } from './name-light.ts';
import { palytoxinCautions } from './palytoxin-cautions.ts';
import type { SaidPar } from './par-verdict.ts';

/** So many letters of ranges or verdicts stand in the headline. */
const MOST_WORDS = 90;

/** Several corals, each over all that its name can mean, and each with the reading said of it where there are as many. */
export function lightsAnswer(named: readonly NamedCoral[], readings: readonly SaidPar[]): Answer {
  const isEach = readings.length === named.length;
  const told = named.map((one, at) => lineOf(one, isEach ? readings[at] : undefined));
  const off = told.filter(({ fact }) => fact.verdict !== undefined && fact.verdict !== 'settled');
  return answer({
    headline: isEach
      ? off.length === 0
        ? 'All of them stand in their range.'
        : `Not all: ${fittingOf(
            off.map(({ words }) => words),
            MOST_WORDS,
          )}. The others stand in their range.`
      : `A range each: ${fittingOf(
          told.map(({ range }) => range),
          MOST_WORDS,
        )}.`,
    read: [
      ...told.map(({ read }) => read),
      ...(isEach ? ['each reading as that of the coral it stands beside, pieces long here'] : []),
      ...(!isEach && readings.length > 0
        ? [`${readings.map(({ text }) => text).join(', ')}: I cannot tell which coral each belongs to`]
        : []),
    ],
    facts: told.map(({ fact }) => fact),
    isList: true,
    steps: [
      ...off.map(({ advice }) => advice[0]),
      'A new piece begins near the low figure and goes up by about 10 % a week.',
      ...off.flatMap(({ advice: [, ...more] }) => more),
    ],
    dangers: palytoxinCautions(named.flatMap(({ entries }) => entries)),
    cautions: ['Too much light harms more often than too little.'],
    sources: ['practice', 'memory'],
  });
}

interface Told {
  readonly read: string;
  readonly range: string;
  readonly words: string;
  readonly advice: readonly [string, ...string[]];
  readonly fact: Fact;
}

function lineOf(named: NamedCoral, reading: SaidPar | undefined): Told {
  const { name, entries } = named;
  const need = needOf(entries);
  const { lowPpfd, highPpfd, startPpfd, rangeBasis } = need;
  const label = entries.length === 1 ? entries[0].names.common[0] : name;
  const range = `${label} ${lowPpfd} to ${highPpfd} PAR`;
  const value = `${lowPpfd} to ${highPpfd} PAR, beginning near ${startPpfd} (${rangeBasis})`;
  const read = `${name} as ${fullNames(entries, MOST_WORDS)}`;
  if (reading === undefined) return { read, range, words: '', advice: [''], fact: { label, value } };
  const { value: ppfd, text } = reading;
  const judged = judgedLight(need, 'settled', { lowPpfd: ppfd, ppfd, highPpfd: ppfd });
  const [first = '', ...more] = sentencesOf(judged.advice);
  return {
    read,
    range,
    words: `${label} at ${text} is ${judged.word}`,
    advice: [`${label}: ${first}`, ...more.map((sentence) => `${label}: ${sentence}`)],
    fact: { label: `${label} at ${text}`, value, verdict: judged.verdict },
  };
}
