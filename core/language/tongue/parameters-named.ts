import { parameterIds, type ParameterId } from '../../water/parameter.ts';
import { fold } from '../fold.ts';
import { withoutMarks } from './letters.ts';
import { namesInTongue } from './parameter-names.ts';
import type { ForeignTongue, Unread } from './tongues.ts';

/** What is measured, where its name stands in a message. */
export interface ParameterSpan {
  readonly id: ParameterId;
  readonly start: number;
  readonly end: number;
}

/** Short names that are used in every language, and are no word of one ("sal", "cal", "mag" are). */
const everywhere: Readonly<Partial<Record<ParameterId, string>>> = {
  salinity: 'sg',
  alkalinity: 'kh, dkh, alk',
  calcium: 'calcium',
  magnesium: 'magnesium',
  nitrate: 'no3',
  phosphate: 'po4',
  ammonia: 'nh3, nh4',
  nitrite: 'no2',
  ph: 'ph',
};
/** Only right before a number: "ca" is also "about", "mg" also a unit. */
const beforeNumber: Readonly<Record<string, ParameterId>> = { ca: 'calcium', mg: 'magnesium' };
const BEFORE_NUMBER = String.raw`(?:ca|mg)(?=\s?[:=]?\s?\d{3})`;

const readers = new Map<Unread, ReturnType<typeof reader>>();

/** Parameters named in a message of that language, in order. Places are those of the text as it was written. */
export function parametersNamedIn(text: string, tongue: Unread): readonly ParameterSpan[] {
  const { pattern, ids } = readers.get(tongue) ?? remembered(tongue);
  return [...fold(text).matchAll(pattern)].flatMap((match) => {
    const id = ids.get(match[0]);
    return id === undefined ? [] : [{ id, start: match.index, end: match.index + match[0].length }];
  });
}

function remembered(tongue: Unread): ReturnType<typeof reader> {
  const made = reader(tongue === 'other' ? {} : namesInTongue[tongue]);
  readers.set(tongue, made);
  return made;
}

function reader(own: (typeof namesInTongue)[ForeignTongue]): {
  readonly pattern: RegExp;
  readonly ids: ReadonlyMap<string, ParameterId>;
} {
  const named = parameterIds.flatMap((id) =>
    [own[id], everywhere[id]]
      .flatMap((names) => names?.split(', ') ?? [])
      .flatMap(spellingsOf)
      .map((name): [string, ParameterId] => [name, id]),
  );
  const longestFirst = named.map(([name]) => name).sort((a, b) => b.length - a.length);
  const whole = [...longestFirst, BEFORE_NUMBER].join('|');
  return {
    pattern: new RegExp(String.raw`(?<![\p{L}\d])(?:${whole})(?![\p{L}\d])`, 'gu'),
    ids: new Map([...named, ...Object.entries(beforeNumber)]),
  };
}

const DIGRAPHS: Readonly<Record<string, string>> = { ä: 'ae', ö: 'oe', ü: 'ue' };

/** With its marks, without them, and with a second letter for them. Check: "härte" -> also "harte", "haerte". */
function spellingsOf(name: string): readonly string[] {
  return [name, withoutMarks(name), name.replace(/[äöü]/g, (letter) => DIGRAPHS[letter] ?? letter)];
}
