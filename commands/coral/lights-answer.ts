import type { NamedCoral } from '../../core/corals/named.ts';
import { judgedLight } from '../../core/corals/light-verdict.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { fullName } from './asked-kind.ts';
import { needOf } from './name-light.ts';
import { palytoxinCautions } from './palytoxin-cautions.ts';
import type { SaidPar } from './par-verdict.ts';

/** Several corals, each over all that its name can mean, and each with the reading said of it where there are as many. */
export function lightsAnswer(named: readonly NamedCoral[], readings: readonly SaidPar[]): Answer {
  const isEach = readings.length === named.length;
  const told = named.map((one, at) => lineOf(one, isEach ? readings[at] : undefined));
  const off = told.filter(({ fact }) => fact.verdict !== undefined && fact.verdict !== 'settled');
  const ranges = told.map(({ range }) => range).join('; ');
  return answer({
    headline: isEach
      ? off.length === 0
        ? 'All of them stand in their range.'
        : `Not all: ${off.map(({ words }) => words).join('; ')}. The others stand in their range.`
      : `A range each: ${ranges}.`,
    read: [
      ...told.map(({ read }) => read),
      ...(isEach ? ['each reading as that of the coral it stands beside, pieces long here'] : []),
      ...(!isEach && readings.length > 0
        ? [`${readings.map(({ text }) => text).join(', ')}: I cannot tell which coral each belongs to`]
        : []),
    ],
    facts: told.map(({ fact }) => fact),
    steps: [
      'A new piece begins near the low figure and goes up by about 10 % a week. Too much light harms more often than too little.',
      ...off.map(({ advice }) => advice),
    ],
    cautions: palytoxinCautions(named.flatMap(({ entries }) => entries)),
    sources: ['practice', 'memory'],
  });
}

interface Told {
  readonly read: string;
  readonly range: string;
  readonly words: string;
  readonly advice: string;
  readonly fact: Fact;
}

function lineOf(named: NamedCoral, reading: SaidPar | undefined): Told {
  const { name, entries } = named;
  const need = needOf(entries);
  const { lowPpfd, highPpfd, startPpfd, rangeBasis } = need;
  const label = entries.length === 1 ? entries[0].names.common[0] : name;
  const range = `${label} ${lowPpfd} to ${highPpfd} PAR`;
  const value = `${lowPpfd} to ${highPpfd} PAR, beginning near ${startPpfd} (${rangeBasis})`;
  const read = `${name} as ${entries.map(fullName).join(', or ')}`;
  if (reading === undefined) return { read, range, words: '', advice: '', fact: { label, value } };
  const { value: ppfd, text } = reading;
  const judged = judgedLight(need, 'settled', { lowPpfd: ppfd, ppfd, highPpfd: ppfd });
  return {
    read,
    range,
    words: `${label} at ${text} is ${judged.word}`,
    advice: `${label}: ${judged.advice}`,
    fact: { label: `${label} at ${text}`, value, verdict: judged.verdict },
  };
}
