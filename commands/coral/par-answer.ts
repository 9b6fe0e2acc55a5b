import { middleOf } from '../../core/corals/light-need.ts';
import type { NamedCoral } from '../../core/corals/named.ts';
import { answer, type Answer } from '../answer.ts';
import { fullNames } from './asked-kind.ts';
import { lightFact, needOf } from './name-light.ts';
import { byKind } from './par-by-kind.ts';
import { palytoxinCautions } from './palytoxin-cautions.ts';
import { adviceOn, judgedFact, onlyVerdict, type SaidPar } from './par-verdict.ts';

/** Kinds told of one name. */
const MOST_KINDS = 5;

/** So many letters of names stand in what was read. */
const MOST_NAMES = 120;

/** The light of a coral that lives by light, over all that its name can mean, and each reading against its start. */
export function parAnswer(named: NamedCoral, readings: readonly SaidPar[]): Answer {
  const { entries } = named;
  const need = needOf(entries);
  const { lowPpfd, highPpfd, startPpfd } = need;
  const [only, other] = readings;
  const name = entries.length === 1 ? entries[0].names.common[0] : named.name;
  const mixed = only === undefined || other !== undefined ? undefined : byKind(entries, only);
  return answer({
    headline:
      mixed?.headline ??
      onlyVerdict(readings, need, name) ??
      `${name}: a range, not one number, ${lowPpfd} to ${highPpfd} PAR${entries.length === 1 ? '' : ' over all it can mean'}. A new piece begins near ${startPpfd}.`,
    read: [
      `${named.name} as ${fullNames(entries, MOST_NAMES)}`,
      ...readings.map(({ text }) => `${text} as PAR at a spot`),
    ],
    facts: [
      ...(mixed === undefined ? readings.map((reading) => judgedFact(reading, need)) : []),
      ...(mixed?.facts ?? entries.map(lightFact)).slice(0, MOST_KINDS),
    ],
    isList: true,
    steps: [
      ...(mixed?.steps ?? adviceOn(readings, need)),
      `While it opens well: up by about ${need.raisePercentAWeek} % a week at most, towards ${mixed === undefined ? `${middleOf(need)} PAR` : 'the middle'} (/light ramp).`,
      'How many hours a day is it lit? The daily total counts (/light hours).',
    ],
    dangers: palytoxinCautions(entries),
    cautions: [
      `Too much, the commoner harm: ${need.tooMuch.signs.join('; ')}. Then: ${need.tooMuch.action}`,
      `Too little: ${need.tooLittle.signs.join('; ')}. Then: ${need.tooLittle.action}`,
      'Many adapt to the upper end.',
      'Light does not promise a colour: food, nutrients and the piece itself do as much.',
    ],
    sources: ['practice', 'memory'],
  });
}
