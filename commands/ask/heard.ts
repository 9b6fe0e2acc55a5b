import type { Frame } from '../../core/language/frame.ts';
import type { LevelPart } from '../../core/language/parts.ts';
import type { SlotName, Slots } from '../../core/language/slots.ts';
import { parameter } from '../../core/water/parameter.ts';

const PARTS: Readonly<Record<LevelPart, string>> = {
  now: '',
  was: ' before',
  wanted: ' wanted',
  change: ' of change',
  rate: ' a time',
  other: ' in other water',
  limit: ' as a limit',
  target: ' wanted',
};

/** What was heard of a message, in a few words: "alkalinity 7.1, 8.5 wanted, 75 gal"; empty where nothing was. */
export function heardOf(slots: Slots): string {
  const levels = (slots.levels ?? []).map(
    ({ of, text, part }) => `${parameter(of).label} ${text}${PARTS[part]}`,
  );
  const others = [
    slots.volume,
    slots.share,
    slots.changed,
    slots.amount,
    slots.salt,
    ...(slots.corals ?? []),
  ];
  return [...levels, ...others.filter((text) => text !== undefined)].join(', ');
}

/** Numbers of a message that an answer of this kind does not rest on, as they were written. */
export function notUsed(frame: Frame, uses: readonly SlotName[]): readonly string[] {
  const { slots, rest } = frame;
  const used = new Set(uses);
  const levels = (slots.levels ?? [])
    .filter(({ of }) => !used.has('levels') && of !== slots.of && of !== 'salinity' && of !== 'temperature')
    .map(({ of, text }) => `${parameter(of).label} ${text}`);
  const single = SINGLE.flatMap((name) => {
    const text = slots[name];
    return used.has(name) || typeof text !== 'string' ? [] : [text];
  });
  const lists = LISTS.flatMap((name) => (used.has(name) ? [] : (slots[name] ?? [])));
  return [...new Set([...levels, ...single, ...lists, ...rest.map(({ text }) => text)])];
}

/** Slots of one number whose use is not plain from another. */
const SINGLE = ['volume', 'share', 'changed', 'amount', 'strength', 'container', 'otherTemperature'] as const;

/** Slots of several numbers of which the same holds. */
const LISTS = ['percents', 'watts', 'batteries'] as const;
