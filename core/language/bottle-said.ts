import { findParameter } from '../water/parameter.ts';
import { relates } from './relations.ts';
import { isDoseUnit, isLevelUnit, isSpoon, isWater } from './kinds-of-said.ts';
import type { Said } from './said.ts';
import type { Bottle } from './slots.ts';
import type { Scanned } from './tokens.ts';

/** What a message says a bottle does, and the numbers that say it. */
interface BottleSaid {
  readonly bottle: Bottle;
  readonly from: readonly Said[];
}

/** Characters between the parts of one such sentence at most. Own choice. */
const NEAR = 60;
/** "0.1 dkh per ml": one millilitre, without a number. */
const PER_ML = /^\s*(?:per|a|an|each|\/)\s*(?:ml|mil|millilit)/;

/** "each 10 ml", "such that 10 ml": what any such dose does. */
const EACH = /\b(?:each|every|per|so that|such that|so)\s*$/;

/**
 * The strength of a bottle by what it does: "1 ml per 50 l gives 0.1 dkh". A dose, a rise, and the water both are for,
 * where that is not the system. Undefined where no such three were said.
 */
export function bottleSaid(scanned: Scanned, said: readonly Said[]): BottleSaid | undefined {
  for (const rise of said.filter(isRise)) {
    const of =
      findParameter(rise.of) ?? said.map((one) => findParameter(one.of)).find((id) => id !== undefined);
    if (of === undefined) continue;
    const behind = scanned.text.slice(rise.number.end, rise.number.end + 12);
    const dose = nearest(
      said.filter((one) => isDrawn(one) && !isPowder(scanned, one) && goesWith(scanned, one, rise)),
      rise,
    );
    if (dose === undefined && !PER_ML.test(behind)) continue;
    const from = dose === undefined ? [rise] : [rise, dose];
    const water = waterOf(scanned, said, from);
    const isOfSystem = water?.part === 'system' && said.filter(({ part }) => part === 'system').length === 1;
    return {
      bottle: {
        of,
        dose: dose?.text ?? '1 ml',
        raises: rise.text,
        ...(water === undefined ? {} : { per: water.text }),
      },
      from: water === undefined || isOfSystem ? from : [...from, water],
    };
  }
  return undefined;
}

/** A rise told as a strength, or as what a millilitre lifted. */
function isRise({ part, number }: Said): boolean {
  return (part === 'strength' || part === 'change') && isLevelUnit(number);
}

/** Something drawn up: millilitres, spoons. */
function isDrawn({ part, number }: Said): boolean {
  return isDoseUnit(number.unit) && (part === 'strength' || part === 'amount' || part === 'none');
}

/** A spoon of a salt that was named is a powder, and no bottle. */
function isPowder({ names }: Scanned, { number }: Said): boolean {
  return isSpoon(number.unit) && names.some((name) => name.class === 'salt');
}

/** Whether a dose and a rise are of one sentence about the bottle. */
function goesWith({ text, tokens }: Scanned, dose: Said, rise: Said): boolean {
  const [first, second] = [dose.number, rise.number].sort((a, b) => a.start - b.start);
  if (first === undefined || second === undefined) return false;
  const between = text.slice(first.end, second.start);
  if (between.length > NEAR || /[.?!;]\s/.test(between)) return false;
  if (dose.part === 'strength' || rise.part === 'strength')
    return dose.part !== 'none' || rise.part === 'strength';
  const words = tokens.filter(({ start, end }) => start >= first.end && end <= second.start);
  const isOne = dose.number.value === 1 || EACH.test(text.slice(0, dose.number.start));
  return isOne && words.some(({ word }) => relates(word, 'raises'));
}

function nearest(found: readonly Said[], rise: Said): Said | undefined {
  return found.toSorted((a, b) => far(a, rise) - far(b, rise) || strengthFirst(a) - strengthFirst(b))[0];
}

function strengthFirst({ part }: Said): number {
  return part === 'strength' ? 0 : 1;
}

function far(a: Said, b: Said): number {
  return Math.max(a.number.start - b.number.end, b.number.start - a.number.end);
}

/** The water it was said for: between dose and rise, or right beside them. */
function waterOf({ text }: Scanned, said: readonly Said[], from: readonly Said[]): Said | undefined {
  const start = Math.min(...from.map(({ number }) => number.start));
  const end = Math.max(...from.map(({ number }) => number.end));
  return said.find((one) => {
    if (from.includes(one) || !isWater(one) || one.number.kinds.includes('share') || one.part === 'changed')
      return false;
    if (isDoseUnit(one.number.unit) || one.of === 'stock' || one.of === 'container') return false;
    const isBetween = one.number.start >= start && one.number.end <= end;
    const gap = text.slice(end, one.number.start);
    const isBehind = one.number.start >= end && gap.length < 16 && !/[.,?!;]/.test(gap);
    return isBetween || isBehind;
  });
}
