import type { Case, Moment } from './case.ts';
import { parameterOf } from './levels-said.ts';
import { ofNames, type OfName, type PartName } from './parts.ts';
import type { Slots } from './slots.ts';
import type { ParameterId } from '../water/parameter.ts';

/** A number an earlier message of a case told, with the part it played. */
export interface ToldNumber {
  readonly part: PartName;
  readonly of: OfName;
  readonly value: number;
  /** As it was written; empty for a bare one. */
  readonly unit: string;
}

const QUANTITY = /^([\d.]+)\s*(.*)$/;

/** Slots of one number besides levels, and the part that fills them. */
const PARTS: readonly (readonly [keyof Slots, PartName, OfName])[] = [
  ['volume', 'system', 'nothing'],
  ['container', 'part', 'container'],
  ['changed', 'changed', 'water'],
  ['share', 'changed', 'share'],
  ['waterRate', 'rate', 'water'],
  ['amount', 'amount', 'substance'],
  ['strength', 'strength', 'substance'],
  ['span', 'span', 'nothing'],
];

/** What the messages of a case told in numbers of the member's own tank, the latest first. */
export function toldNumbers({ moments }: Case): readonly ToldNumber[] {
  return moments
    .filter(({ isOthers }) => isOthers !== true)
    .toReversed()
    .flatMap(numbersOf);
}

function numbersOf({ slots }: Moment): readonly ToldNumber[] {
  const levels = (slots.levels ?? []).flatMap(({ of, part, text }) => toldAs(part, ofNameOf(of), text));
  const others = PARTS.flatMap(([name, part, of]) => {
    const text = slots[name];
    return typeof text === 'string' ? toldAs(part, of, text) : [];
  });
  return [...levels, ...others];
}

/** What a number is of, where it is a level of this parameter. */
export function ofNameOf(id: ParameterId): OfName {
  return ofNames.find((name) => parameterOf(name) === id) ?? 'nothing';
}

function toldAs(part: PartName, of: OfName, text: string): readonly ToldNumber[] {
  const [, number, unit = ''] = QUANTITY.exec(text) ?? [];
  return number === undefined || unit.includes('+') ? [] : [{ part, of, value: Number(number), unit }];
}
